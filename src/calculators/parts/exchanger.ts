import type { Arrangement } from "../../../calc/exchanger/arrangement.ts";
import { arrangements } from "../../../calc/exchanger/arrangements.ts";
import { USUAL_WATER_PRESSURE } from "../../../calc/exchanger/usual-water.ts";
import type { ChartPicture, Choice, Field, Outcome, Picture } from "../engine/calculator.ts";

const aqueous = { coolant: ["water", "seawater"] } as const;
const stated = { coolant: ["stated"] } as const;

/** The liquid that cools, without its flow. */
export const coolantInputs = {
  coolant: {
    label: "Coolant",
    options: { water: "fresh water", seawater: "seawater", stated: "a liquid of known heat capacity" },
    start: "water",
    help: "",
    heading: "Water",
  },
  T_w_in: {
    label: "Water temperature at the inlet",
    symbol: "T_w_in",
    kind: "temperature",
    start: 295.15,
    limits: [223.15, 443.15],
    typical: [275.15, 363.15],
    help: "",
  },
  p_w: {
    label: "Water pressure at the outlet",
    symbol: "p_w",
    kind: "pressure",
    start: USUAL_WATER_PRESSURE,
    limits: [20_000, 2_000_000],
    typical: [101_325, 700_000],
    help: "Decides when it boils.",
    when: aqueous,
  },
  S: {
    label: "Salinity",
    symbol: "S",
    kind: "fraction",
    start: 0.035,
    limits: [0, 0.12],
    typical: [0.005, 0.045],
    help: "Mass of salt in the mass of seawater.",
    when: { coolant: ["seawater"] },
  },
  c: {
    label: "Heat capacity of the liquid",
    symbol: "c_m",
    kind: "specificHeat",
    start: 3500,
    limits: [500, 10_000],
    typical: [1800, 4300],
    help: "At its mean temperature.",
    when: stated,
  },
} as const satisfies Record<string, Field | Choice>;

/** How far the water is from boiling at the warmer of its two ends. Of many channels one may be far hotter inside. */
export const boilingResult = {
  label: "Water at its warmer end, below boiling",
  symbol: "Delta_T_sat",
  kind: "temperatureDifference",
  when: aqueous,
} as const satisfies Outcome;

/** The cooler seen by its air, by its smaller stream, and by its mean temperature difference. */
export const coolerResults = {
  P: { label: "Effectiveness, on the air", symbol: "P", kind: "fraction" },
  P_most: { label: "Highest effectiveness at any size", symbol: "P_most", kind: "fraction" },
  NTU: { label: "Transfer units, on the air", symbol: "NTU", kind: "ratio" },
  R: { label: "Heat-capacity rates, air over water", symbol: "R", kind: "ratio" },
  epsilon: { label: "Effectiveness, on the smaller stream", symbol: "epsilon", kind: "fraction" },
  C_star: { label: "Heat-capacity rates, smaller over larger", symbol: "C_star", kind: "ratio" },
  NTU_min: { label: "Transfer units, on the smaller stream", symbol: "NTU_min", kind: "ratio" },
  Delta_T_lm: {
    label: "Logarithmic mean temperature difference",
    symbol: "Delta_T_lm",
    kind: "temperatureDifference",
  },
  F: { label: "Correction factor for the arrangement", symbol: "F", kind: "ratio" },
} as const satisfies Record<string, Outcome>;

/** How much of it flows. */
export const waterFlowInputs = {
  flow: {
    label: "Water flow given as",
    options: { mass: "mass flow", volume: "volume flow at the inlet" },
    start: "mass",
    help: "",
  },
  m_w: {
    label: "Water flow",
    symbol: "m_w",
    kind: "massFlow",
    start: 0.9,
    limits: [1e-4, 1000],
    typical: [0.02, 30],
    help: "",
    when: { flow: ["mass"] },
  },
  V_w: {
    label: "Water flow",
    symbol: "V_w",
    kind: "liquidFlow",
    start: 0.0009,
    limits: [1e-7, 1],
    typical: [2e-5, 0.03],
    help: "",
    when: { flow: ["volume"] },
  },
  rho_w: {
    label: "Density of the liquid",
    symbol: "rho",
    kind: "density",
    start: 1040,
    limits: [500, 2000],
    typical: [700, 1150],
    help: "At the inlet.",
    when: { ...stated, flow: ["volume"] },
  },
} as const satisfies Record<string, Field | Choice>;

/** A core by its two numbers, on the air. */
export const coreInputs = {
  NTU: {
    ...coolerResults.NTU,
    start: 3,
    limits: [0, 50],
    typical: [0.3, 6],
    help: "Heat conductance over the heat-capacity rate of the air.",
  },
  R: {
    ...coolerResults.R,
    start: 0.5,
    limits: [0, 20],
    typical: [0, 2],
    help: "Mass flow times heat capacity of the air, over that of the water.",
  },
} as const satisfies Record<string, Field>;

/** With the water the wrong way round: what another arrangement becomes when its hoses are swapped. */
const isWrongWay = ({ layout }: Arrangement) =>
  layout.kind === "along" ? layout.water === "with" : layout.kind === "across" && layout.order === "parallel";

const cores = arrangements.filter((one) => !isWrongWay(one));

/** The cores whose water hoses have two ways round. */
export const turnable = cores.filter((core) => core.swapped !== undefined).map(({ id }) => id);

/** The cores whose inside can be drawn: what the shell mixes has no picture. */
export const fieldCores = cores.filter(({ layout }) => layout.kind !== "shell").map(({ id }) => id);

/** The arrangement that a core and its hoses make. */
export function arrangementFrom(choices: Readonly<Record<string, unknown>>): string {
  const core = cores.find(({ id }) => id === choices.core);
  return (choices.hoses === "swapped" ? core?.swapped : undefined) ?? String(choices.core);
}

/** How air and water pass each other. */
export const arrangementInputs = {
  core: {
    label: "Arrangement",
    options: Object.fromEntries(cores.map(({ id, name }) => [id, name])),
    start: "counter-cross-2",
    help: "",
    heading: "Cooler",
    drawn: arrangementFrom,
  },
  hoses: {
    label: "Water hoses",
    options: {
      right: "in where the air leaves",
      swapped: "swapped: in where the air enters",
    },
    start: "right",
    help: "",
    when: { core: turnable },
  },
} as const satisfies Record<string, Choice>;

type Chart<I extends string, O extends string> = Omit<ChartPicture<I, O>, "draw" | "curves">;

/** A chart of the arrangement chosen beside counterflow and, where there is one, beside the other way round of the hoses. */
export function besideOthers<I extends string, O extends string>(
  chart: Chart<I, O>,
): readonly Picture<I | keyof typeof arrangementInputs, O>[] {
  const own = { label: "this arrangement" };
  const ideal = { label: "counterflow", dash: "ideal", with: { core: "counterflow", hoses: "right" } };
  const other = (label: string, hoses: string) => ({ label, dash: "alternative", with: { hoses } });
  const drawn = [
    { when: { hoses: ["right"] }, curves: [own, ideal, other("hoses swapped", "swapped")] },
    { when: { hoses: ["swapped"] }, curves: [own, ideal, other("hoses the right way", "right")] },
    { curves: [own, ideal] },
  ];
  return drawn.map((part) => ({ ...chart, draw: "chart", ...part })) as unknown as ReturnType<
    typeof besideOthers<I, O>
  >;
}
