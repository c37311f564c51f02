import { contributions } from "../../calc/charge/contributions.ts";
import { creditOfFour } from "../../calc/charge/credit-of-four.ts";
import { creditOfThree } from "../../calc/charge/credit-of-three.ts";
import { creditOfTwo } from "../../calc/charge/credit-of-two.ts";
import { densityGained } from "../../calc/charge/density-gained.ts";
import { logMeanRatio } from "../../calc/charge/log-mean-ratio.ts";
import { lossOfFitted } from "../../calc/charge/loss-of-fitted.ts";
import { meanDensity } from "../../calc/charge/mean-density.ts";
import { partOfDrying } from "../../calc/charge/part-of-drying.ts";
import { partOfPressure } from "../../calc/charge/part-of-pressure.ts";
import { partOfTemperature } from "../../calc/charge/part-of-temperature.ts";
import { coolerOutletTemperature } from "../../calc/exchanger/cooler-outlet-temperature.ts";
import { pressureAfterLoss } from "../../calc/flow/pressure-after-loss.ts";
import { enhancementFactor } from "../../calc/fluids/enhancement-factor.ts";
import { saturatedHumidityRatio } from "../../calc/fluids/saturated-humidity-ratio.ts";
import { saturationPressure } from "../../calc/fluids/saturation-pressure.ts";
import {
  type Calculator,
  type Choice,
  defineCalculator,
  type Field,
  type Outcome,
  type SharesPicture,
  type StatesPicture,
  type When,
} from "./engine/calculator.ts";
import { compressorInputs, pressureRatioField } from "./parts/compressor.ts";
import {
  changeOutcomes,
  changeRows,
  contributionValues,
  creditOutcomes,
  creditRows,
  outfitOutcomes,
  outfitRows,
  stationOutcomes,
  stationRows,
} from "./parts/contributions.ts";
import { isentropicRelations } from "./parts/relations.ts";

/** One compressor and the cooler behind it, which may be none. */
function stageInputs<N extends "1" | "2">(n: N, start: Readonly<Record<"r" | "eta_s" | "P", number>>) {
  const isFirst = n === "1";
  const when: When = isFirst ? {} : { stages: ["two"] };
  const withCooler: When = { [`cooler_${n}`]: ["fitted"] };
  const fields = {
    r: {
      ...pressureRatioField,
      heading: isFirst ? "First stage" : "Second stage",
      symbol: isFirst ? "r_1" : "r_2",
      start: start.r,
      when,
    },
    eta_s: {
      label: "Isentropic efficiency",
      symbol: isFirst ? "eta_s1" : "eta_s_2",
      kind: "fraction",
      start: start.eta_s,
      limits: compressorInputs.eta_s.limits,
      typical: compressorInputs.eta_s.typical,
      help: compressorInputs.eta_s.help,
      when,
    },
    cooler: {
      label: "Cooler behind it",
      options: { fitted: "fitted", none: "none" },
      start: "fitted",
      help: "",
      when,
    },
    P: {
      label: "Temperature effectiveness of the cooler",
      symbol: isFirst ? "P" : "P_45",
      kind: "fraction",
      start: start.P,
      limits: [0, 1],
      typical: [0.4, 0.95],
      help: "",
      when: withCooler,
    },
    T_w_in: {
      label: "Cooling water, inlet temperature",
      symbol: isFirst ? "T_w_in" : "T_w_in_45",
      kind: "temperature",
      start: 298.15,
      limits: [233.15, 393.15],
      typical: [273.15, 363.15],
      help: "",
      when: withCooler,
    },
  } as const satisfies Record<string, Field | Choice>;
  return Object.fromEntries(Object.entries(fields).map(([id, field]) => [`${id}_${n}`, field])) as Record<
    `${keyof typeof fields}_${N}`,
    Field | Choice
  >;
}

const lossField = {
  label: "Pressure lost in the cooler",
  kind: "pressureDifference",
  limits: [0, 200_000],
  typical: [0, 12_000],
  help: "With everything fitted.",
} as const;

const byHardware: When = { split: ["hardware"] };
const byChanges: When = { split: ["changes"] };
const one: When = { stages: ["one"] };
const two: When = { stages: ["two"] };

const sum = { label: "density gained", y: "Delta_D" } as const;

const shares = (rows: SharesPicture<string>["rows"], when: When, title: string) => ({
  draw: "shares" as const,
  rows,
  sum,
  when,
  title,
  note: "As multiples of the density at the inlet.",
});

const table = (
  columns: readonly string[],
  rows: StatesPicture<string>["rows"],
  when: When,
  title: string,
) => ({ draw: "states" as const, columns, rows, when, title });

const atStations = ["Pressure", "Temperature", "Density"];

export default defineCalculator<string, string>({
  id: "contributions",
  title: "Who contributes what",
  group: "Compression",
  asks: "How much of the charge do I owe to the compressor, and how much to the cooler?",
  inputs: {
    split: {
      label: "The gain is split among",
      options: { hardware: "the hardware", changes: "the changes of the air" },
      start: "hardware",
      help: "",
    },
    stages: {
      label: "Stages of compression",
      options: { one: "one", two: "two" },
      start: "one",
      help: "",
    },
    p_1: {
      label: "Pressure at the first compressor's inlet",
      heading: "Air",
      symbol: "p_1",
      kind: "pressure",
      start: 98_000,
      limits: [10_000, 1_500_000],
      typical: [60_000, 110_000],
      help: "",
    },
    T_1: {
      label: "Temperature there",
      symbol: "T_1",
      kind: "temperature",
      start: 298.15,
      limits: [223.15, 423.15],
      typical: [243.15, 323.15],
      help: "",
    },
    w: {
      label: "Humidity ratio of the air",
      symbol: "w",
      kind: "humidityRatio",
      start: 0,
      limits: [0, 0.2],
      typical: [0, 0.04],
      help: "Zero leaves the vapour out.",
    },
    ...stageInputs("1", { r: 2.25, eta_s: 0.72, P: 0.78 }),
    Delta_p_23: {
      ...lossField,
      symbol: "Delta_p_23",
      start: 9000,
      when: { cooler_1: ["fitted"] },
    },
    ...stageInputs("2", { r: 1.8, eta_s: 0.74, P: 0.8 }),
    Delta_p_45: {
      ...lossField,
      symbol: "Delta_p_45",
      start: 7000,
      when: { cooler_2: ["fitted"] },
    },
    n_p: {
      label: "Exponent of the losses over the flow",
      heading: "Engines with less fitted",
      symbol: "n_p",
      kind: "ratio",
      start: 1.8,
      limits: [1, 2],
      typical: [1.6, 2],
      help: "2 in rough or headers alone, 1 where the flow is laminar. Most cores lie between 1.7 and 1.9.",
      when: byHardware,
    },
  },
  results: {
    Delta_D: {
      label: "Density gained, as a multiple of the density at the inlet",
      symbol: "Delta_D",
      kind: "ratio",
    },
    ...creditOutcomes,
    ...changeOutcomes,
    D_rho: { label: "Density ratio, manifold to inlet", symbol: "D_rho", kind: "ratio" },
    rho_m: { label: "Density in the manifold", symbol: "rho_m", kind: "density" },
    T_m: { label: "Temperature in the manifold", symbol: "T_m", kind: "temperature" },
    p_m: { label: "Pressure in the manifold, absolute", symbol: "p_m", kind: "pressure" },
    work_C: {
      label: "Work of the compressor for each kilogram of air",
      symbol: "Delta_h",
      kind: "specificEnergy",
      when: one,
    },
    work_C1: {
      label: "Work of the first compressor for each kilogram of air",
      symbol: "Delta_h",
      kind: "specificEnergy",
      when: two,
    },
    work_C2: {
      label: "Work of the second compressor for each kilogram of air",
      symbol: "Delta_h",
      kind: "specificEnergy",
      when: two,
    },
    ...outfitOutcomes,
    ...stationOutcomes,
  } satisfies Record<string, Outcome>,
  relations: [
    ...isentropicRelations,
    coolerOutletTemperature,
    pressureAfterLoss,
    saturationPressure,
    enhancementFactor,
    saturatedHumidityRatio,
    densityGained,
    logMeanRatio,
    partOfPressure,
    partOfTemperature,
    partOfDrying,
    meanDensity,
    lossOfFitted,
    creditOfTwo,
    creditOfThree,
    creditOfFour,
  ],
  model: (given, trace) =>
    contributionValues(
      contributions(given as unknown as Parameters<typeof contributions>[0], trace),
    ) as ReturnType<Calculator["model"]>,
  pictures: [
    shares(creditRows.one, { ...byHardware, ...one }, "What each device is credited with."),
    shares(creditRows.two, { ...byHardware, ...two }, "What each device is credited with."),
    shares(changeRows.one, { ...byChanges, ...one }, "What each change of the air adds or takes."),
    shares(changeRows.two, { ...byChanges, ...two }, "What each change of the air adds or takes."),
  ],
  also: [
    table(
      ["Loss of the cooler", "Pressure", "Temperature", "Density over inlet"],
      outfitRows.one,
      { ...byHardware, ...one },
      "The manifold of the same engine with only some of the hardware.",
    ),
    table(
      ["Loss, first cooler", "Loss, second cooler", "Pressure", "Temperature", "Density over inlet"],
      outfitRows.two,
      { ...byHardware, ...two },
      "The manifold of the same engine with only some of the hardware.",
    ),
    table(atStations, stationRows.one, { ...byChanges, ...one }, "The air on its way."),
    table(atStations, stationRows.two, { ...byChanges, ...two }, "The air on its way."),
  ],
});
