import type { Contributions } from "../../../calc/charge/contributions.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { Outcome, When } from "../engine/calculator.ts";

/*
 * Names of the outcomes of the splits, made by code: each device and each change by itself, the engine with every part of the
 * hardware, and the air at every station.
 */

interface Row {
  readonly label: string;
  readonly y: string;
}

interface StateRow {
  readonly label: string;
  readonly values: readonly string[];
}

/** Devices in the order of the air, as one stage and as two call them. */
const devices = [
  { id: "C1", one: "compressor", two: "first compressor", fitted: {} },
  { id: "K1", one: "cooler", two: "first cooler", fitted: { cooler_1: ["fitted"] } },
  { id: "C2", one: undefined, two: "second compressor", fitted: {} },
  { id: "K2", one: undefined, two: "second cooler", fitted: { cooler_2: ["fitted"] } },
] as const satisfies readonly { id: string; one: string | undefined; two: string; fitted: When }[];

const changes = ["pressure", "heating", "cooling", "loss", "drying"] as const;
const changeWords = {
  pressure: "compression",
  heating: "heating by compression",
  cooling: "cooling",
  loss: "the loss of the cooler",
  drying: "drying in the cooler",
} as const;
const ofCooler: readonly string[] = ["cooling", "loss", "drying"];

const one: When = { stages: ["one"] };
const two: When = { stages: ["two"] };
const byHardware: When = { split: ["hardware"] };
const byChanges: When = { split: ["changes"] };

const part = (label: string, when: When): Outcome => ({ label, symbol: "Delta_D", kind: "ratio", when });

/** What each device is credited with. */
export const creditOutcomes: Readonly<Record<string, Outcome>> = Object.fromEntries(
  devices.flatMap((device) => [
    ...(device.one
      ? [
          [
            `one_${device.id}`,
            part(`Credited to the ${device.one}`, { ...byHardware, ...one, ...device.fitted }),
          ] as const,
        ]
      : []),
    [
      `two_${device.id}`,
      part(`Credited to the ${device.two}`, { ...byHardware, ...two, ...device.fitted }),
    ] as const,
  ]),
);

export const creditRows: Readonly<Record<"one" | "two", readonly Row[]>> = {
  one: devices.flatMap(({ id, one: label }) => (label ? [{ label, y: `one_${id}` }] : [])),
  two: devices.map(({ id, two: label }) => ({ label, y: `two_${id}` })),
};

const nth = { 1: "first", 2: "second" } as const;

/** What each change of the air adds or takes. */
export const changeOutcomes: Readonly<Record<string, Outcome>> = Object.fromEntries(
  changes.flatMap((change) => {
    const words = `From ${changeWords[change]}`;
    const fitted = (n: 1 | 2): When => (ofCooler.includes(change) ? { [`cooler_${n}`]: ["fitted"] } : {});
    return [
      [`one_${change}`, part(words, { ...byChanges, ...one, ...fitted(1) })],
      ...([1, 2] as const).map((n) => [
        `${change}_${n}`,
        part(`${words}, ${nth[n]} stage`, { ...byChanges, ...two, ...fitted(n) }),
      ]),
    ] as const;
  }),
);

export const changeRows: Readonly<Record<"one" | "two", readonly Row[]>> = {
  one: changes.map((change) => ({ label: changeWords[change], y: `one_${change}` })),
  two: ([1, 2] as const).flatMap((n) =>
    changes.map((change) => ({ label: `${changeWords[change]}, ${nth[n]} stage`, y: `${change}_${n}` })),
  ),
};

/** Every set of devices by the bits of its number, as the table names it. */
const sets = Array.from({ length: 2 ** devices.length }, (_, set) => ({
  set,
  ids: devices.filter((_, i) => (set >> i) % 2 === 1).map(({ id }) => id),
  one: nameOf(set, "one"),
  two: nameOf(set, "two"),
}));

function nameOf(set: number, words: "one" | "two"): string {
  const isFitted = (i: number) => (set >> i) % 2 === 1;
  const some = [
    named(isFitted(0), words === "two" && isFitted(2), "compressor", words),
    named(isFitted(1), words === "two" && isFitted(3), "cooler", words),
  ].filter((name) => name !== "");
  return some.length === 0 ? "nothing" : some.join(", ");
}

function named(first: boolean, second: boolean, what: string, words: "one" | "two"): string {
  if (first && second) return `both ${what}s`;
  if (!first && !second) return "";
  if (words === "one") return what;
  return `${first ? "first" : "second"} ${what}`;
}

const inPicture = (label: string, rest: Omit<Outcome, "label" | "inPicture">): Outcome => ({
  label,
  ...rest,
  inPicture: true,
});

/** The manifold of the engine with every part of the hardware, by the number of the set. */
export const outfitOutcomes: Readonly<Record<string, Outcome>> = Object.fromEntries(
  sets.flatMap(({ set, two: name }) => [
    [
      `loss_1_${set}`,
      inPicture(`Loss of the first cooler with ${name}`, {
        symbol: "Delta_p_23",
        kind: "pressureDifference",
      }),
    ],
    [
      `loss_2_${set}`,
      inPicture(`Loss of the second cooler with ${name}`, {
        symbol: "Delta_p_45",
        kind: "pressureDifference",
      }),
    ],
    [`p_${set}_fitted`, inPicture(`Pressure with ${name}`, { symbol: "p_m", kind: "pressure" })],
    [`T_${set}_fitted`, inPicture(`Temperature with ${name}`, { symbol: "T_m", kind: "temperature" })],
    [`D_${set}_fitted`, inPicture(`Density ratio with ${name}`, { symbol: "D_rho", kind: "ratio" })],
  ]),
);

const manifoldOf = (set: number) => [`p_${set}_fitted`, `T_${set}_fitted`, `D_${set}_fitted`];

export const outfitRows: Readonly<Record<"one" | "two", readonly StateRow[]>> = {
  one: sets
    .slice(0, 4)
    .map(({ set, one: label }) => ({ label, values: [`loss_1_${set}`, ...manifoldOf(set)] })),
  two: sets.map(({ set, two: label }) => ({
    label,
    values: [`loss_1_${set}`, `loss_2_${set}`, ...manifoldOf(set)],
  })),
};

/** Stations of the air; the last of a stage is missing where no cooler is fitted. */
const stations = [
  { n: 1, one: "inlet", two: "inlet" },
  { n: 2, one: "after the compressor", two: "after the first compressor" },
  { n: 3, one: "after the cooler", two: "after the first cooler" },
  { n: 4, one: "", two: "after the second compressor" },
  { n: 5, one: "", two: "after the second cooler" },
] as const;

export const stationOutcomes: Readonly<Record<string, Outcome>> = Object.fromEntries(
  stations.flatMap(({ n, two: place }) => [
    [`station_p_${n}`, inPicture(`Pressure, ${place}`, { symbol: `p_${n}`, kind: "pressure" })],
    [`station_T_${n}`, inPicture(`Temperature, ${place}`, { symbol: `T_${n}`, kind: "temperature" })],
    [`station_rho_${n}`, inPicture(`Density, ${place}`, { symbol: `rho_${n}`, kind: "density" })],
  ]),
);

const stationRow = (n: number, label: string): StateRow => ({
  label,
  values: [`station_p_${n}`, `station_T_${n}`, `station_rho_${n}`],
});

export const stationRows: Readonly<Record<"one" | "two", readonly StateRow[]>> = {
  one: stations.slice(0, 3).map(({ n, one: label }) => stationRow(n, label)),
  two: stations.map(({ n, two: label }) => stationRow(n, label)),
};

type Values = Record<string, SI | undefined>;

/** What the model found, under the names of the outcomes. */
export function contributionValues(found: Contributions): Readonly<Values> {
  const { paths, inlet, works } = found;
  const stages = paths.length === 1 ? "one" : "two";
  const end = paths.at(-1)?.after ?? inlet;
  return {
    Delta_D: found.Delta_D,
    D_rho: found.D_rho,
    rho_m: end.rho,
    T_m: end.T,
    p_m: end.p,
    work_C: works[0],
    work_C1: works[0],
    work_C2: works[1],
    ...creditsOf(found, stages),
    ...changesOf(found, stages),
    ...outfitsOf(found),
    ...stationsOf(found),
  };
}

const creditsOf = ({ hardware }: Contributions, stages: "one" | "two"): Values =>
  Object.fromEntries([...(hardware?.credits ?? [])].map(([id, credit]) => [`${stages}_${id}`, credit]));

const changesOf = ({ changes: found }: Contributions, stages: "one" | "two"): Values =>
  Object.fromEntries(
    (found ?? []).flatMap((stage, i) =>
      changes.map((change) => [stages === "one" ? `one_${change}` : `${change}_${i + 1}`, stage[change]]),
    ),
  );

function outfitsOf({ hardware, devices: fitted }: Contributions): Values {
  const values: Values = {};
  for (const [own, { losses, end, D_rho }] of hardware?.outfits ?? []) {
    const ids = fitted.filter((_, i) => (own >> i) % 2 === 1);
    const set = sets.find(
      (one) => one.ids.length === ids.length && one.ids.every((id) => ids.includes(id)),
    )?.set;
    values[`loss_1_${set}`] = losses.get("K1");
    values[`loss_2_${set}`] = losses.get("K2");
    values[`p_${set}_fitted`] = end.p;
    values[`T_${set}_fitted`] = end.T;
    values[`D_${set}_fitted`] = D_rho;
  }
  return values;
}

function stationsOf({ inlet, paths }: Contributions): Values {
  const states = [
    inlet,
    ...paths.flatMap(({ before, after }) => [before, after === before ? undefined : after]),
  ];
  return Object.fromEntries(
    states.flatMap((state, i) => [
      [`station_p_${i + 1}`, state?.p],
      [`station_T_${i + 1}`, state?.T],
      [`station_rho_${i + 1}`, state?.rho],
    ]),
  );
}
