import type { Contributions } from "../../../calc/charge/contributions.ts";
import { outfitName, setsOf, thoseIn } from "../../../calc/charge/device-set.ts";
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
  { id: "K1", one: "cooler", two: "first cooler", fitted: { cooler: ["effectiveness"] } },
  { id: "C2", one: undefined, two: "second compressor", fitted: {} },
  { id: "K2", one: undefined, two: "second cooler", fitted: { cooler_45: ["effectiveness"] } },
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

/** Outcomes that are a group of their own. */
const underHeading = (
  heading: string,
  outcomes: readonly (readonly [id: string, Outcome])[],
): Readonly<Record<string, Outcome>> =>
  Object.fromEntries(outcomes.map(([id, outcome], i) => [id, i === 0 ? { ...outcome, heading } : outcome]));

const part = (label: string, when: When): Outcome => ({ label, symbol: "Delta_D", kind: "ratio", when });
const share = (label: string, when: When): Outcome => ({ label, symbol: "s_D", kind: "fraction", when });

/** One outcome for each device of one stage, and of two; `${start}one_C1`. */
const ofDevices = (start: string, outcome: (device: string, when: When) => Outcome) =>
  devices.flatMap(({ id, one: alone, two: amongOthers, fitted }) => [
    ...(alone ? [[`${start}one_${id}`, outcome(alone, { ...byHardware, ...one, ...fitted })] as const] : []),
    [`${start}two_${id}`, outcome(amongOthers, { ...byHardware, ...two, ...fitted })] as const,
  ]);

/** What each device is credited with, and its share of the gain. */
export const creditOutcomes: Readonly<Record<string, Outcome>> = {
  ...underHeading(
    "Density gained, split among the hardware",
    ofDevices("", (device, when) => part(`Credited to the ${device}`, when)),
  ),
  ...underHeading(
    "As shares of the gain",
    ofDevices("share_", (device, when) => share(`Share of the ${device}`, when)),
  ),
};

export const creditRows: Readonly<Record<"one" | "two", readonly Row[]>> = {
  one: devices.flatMap(({ id, one: label }) => (label ? [{ label, y: `one_${id}` }] : [])),
  two: devices.map(({ id, two: label }) => ({ label, y: `two_${id}` })),
};

const nth = { 1: "first", 2: "second" } as const;

const changedBy = (change: (typeof changes)[number], n: 1 | 2): When =>
  ofCooler.includes(change) ? { [n === 1 ? "cooler" : "cooler_45"]: ["effectiveness"] } : {};

/** What each change of the air adds or takes, stage by stage. */
export const changeOutcomes: Readonly<Record<string, Outcome>> = underHeading(
  "Density gained, split among the changes of the air",
  [
    ...changes.map(
      (change) =>
        [
          `one_${change}`,
          part(`From ${changeWords[change]}`, { ...byChanges, ...one, ...changedBy(change, 1) }),
        ] as const,
    ),
    ...([1, 2] as const).flatMap((n) =>
      changes.map(
        (change) =>
          [
            `${change}_${n}`,
            part(`From ${changeWords[change]}, ${nth[n]} stage`, {
              ...byChanges,
              ...two,
              ...changedBy(change, n),
            }),
          ] as const,
      ),
    ),
  ],
);

export const changeRows: Readonly<Record<"one" | "two", readonly Row[]>> = {
  one: changes.map((change) => ({ label: changeWords[change], y: `one_${change}` })),
  two: ([1, 2] as const).flatMap((n) =>
    changes.map((change) => ({ label: `${changeWords[change]}, ${nth[n]} stage`, y: `${change}_${n}` })),
  ),
};

/** The engine with every part of the hardware: the name that ids hold, and what the table calls it. */
const outfits = setsOf(devices.length).map((set) => {
  const ids: readonly string[] = thoseIn(devices, set).map(({ id }) => id);
  return {
    name: outfitName(ids),
    isOfOne: !ids.includes("C2") && !ids.includes("K2"),
    one: labelOf(ids, "one"),
    two: labelOf(ids, "two"),
  };
});

function labelOf(ids: readonly string[], words: "one" | "two"): string {
  const some = [
    named(ids.includes("C1"), ids.includes("C2"), "compressor", words),
    named(ids.includes("K1"), ids.includes("K2"), "cooler", words),
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

/** The manifold of the engine with every part of the hardware, and the losses of its coolers. */
export const outfitOutcomes: Readonly<Record<string, Outcome>> = Object.fromEntries(
  outfits.flatMap(({ name, two: label }) => [
    [
      `loss_K1_of_${name}`,
      inPicture(`Loss of the first cooler with ${label}`, {
        symbol: "Delta_p_23",
        kind: "pressureDifference",
      }),
    ],
    [
      `loss_K2_of_${name}`,
      inPicture(`Loss of the second cooler with ${label}`, {
        symbol: "Delta_p_45",
        kind: "pressureDifference",
      }),
    ],
    [`p_${name}`, inPicture(`Pressure with ${label}`, { symbol: "p_m", kind: "pressure" })],
    [`T_${name}`, inPicture(`Temperature with ${label}`, { symbol: "T_m", kind: "temperature" })],
    [`D_${name}`, inPicture(`Density ratio with ${label}`, { symbol: "D_rho", kind: "ratio" })],
  ]),
);

const manifoldOf = (name: string) => [`p_${name}`, `T_${name}`, `D_${name}`];

export const outfitRows: Readonly<Record<"one" | "two", readonly StateRow[]>> = {
  one: outfits
    .filter(({ isOfOne }) => isOfOne)
    .map(({ name, one: label }) => ({ label, values: [`loss_K1_of_${name}`, ...manifoldOf(name)] })),
  two: outfits.map(({ name, two: label }) => ({
    label,
    values: [`loss_K1_of_${name}`, `loss_K2_of_${name}`, ...manifoldOf(name)],
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

const creditsOf = ({ hardware }: Contributions, stages: "one" | "two"): Values => ({
  ...Object.fromEntries([...(hardware?.credits ?? [])].map(([id, credit]) => [`${stages}_${id}`, credit])),
  ...Object.fromEntries([...(hardware?.shares ?? [])].map(([id, share]) => [`share_${stages}_${id}`, share])),
});

const changesOf = ({ changes: found }: Contributions, stages: "one" | "two"): Values =>
  Object.fromEntries(
    (found ?? []).flatMap((stage, i) =>
      changes.map((change) => [stages === "one" ? `one_${change}` : `${change}_${i + 1}`, stage[change]]),
    ),
  );

const outfitsOf = ({ hardware }: Contributions): Values =>
  Object.fromEntries(
    [...(hardware?.outfits ?? [])].flatMap(([name, { losses, end, D_rho }]) => [
      ...[...losses].map(([id, loss]) => [`loss_${id}_of_${name}`, loss]),
      [`p_${name}`, end.p],
      [`T_${name}`, end.T],
      [`D_${name}`, D_rho],
    ]),
  );

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
