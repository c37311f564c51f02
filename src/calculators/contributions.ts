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
import {
  type Calculator,
  type Choice,
  defineCalculator,
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
import { coolerInputs, effectivenessField, waterInletField } from "./parts/cooler.ts";
import { inletInputs } from "./parts/inlet.ts";
import { condensingRelations, isentropicRelations } from "./parts/relations.ts";

const fittedChoice = {
  label: "Cooler behind it",
  options: { effectiveness: "fitted", none: "none" },
  start: "effectiveness",
  help: "",
} as const satisfies Choice;

const lossField = { ...coolerInputs.Delta_p_23, help: "With everything fitted." } as const;

const byHardware: When = { split: ["hardware"] };
const byChanges: When = { split: ["changes"] };
const one: When = { stages: ["one"] };
const two: When = { stages: ["two"] };
const withFirst: When = { cooler: ["effectiveness"] };
const withSecond: When = { cooler_45: ["effectiveness"] };

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
  note?: string,
) => ({ draw: "states" as const, columns, rows, when, title, ...(note && { note }) });

const notFitted = "— where it is not fitted.";

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
    ...inletInputs,
    p_1: { ...inletInputs.p_1, label: "Pressure at the first compressor's inlet", heading: "Air" },
    T_1: { ...inletInputs.T_1, label: "Temperature there" },
    r_1: { ...pressureRatioField, heading: "First stage", symbol: "r_1", start: 2.25 },
    eta_s: { ...compressorInputs.eta_s, start: 0.72, when: {} },
    cooler: fittedChoice,
    P: { ...effectivenessField, symbol: "P", when: withFirst },
    T_w_in: { ...waterInletField, symbol: "T_w_in", when: withFirst },
    Delta_p_23: { ...lossField, start: 9000, when: withFirst },
    r_2: { ...pressureRatioField, heading: "Second stage", symbol: "r_2", start: 1.8, when: two },
    eta_s_2: { ...compressorInputs.eta_s, symbol: "eta_s_2", when: two },
    cooler_45: { ...fittedChoice, when: two },
    P_45: { ...effectivenessField, symbol: "P_45", start: 0.8, when: withSecond },
    T_w_in_45: { ...waterInletField, symbol: "T_w_in_45", when: withSecond },
    Delta_p_45: { ...lossField, symbol: "Delta_p_45", start: 7000, when: withSecond },
    n_p: {
      label: "Exponent of the losses over the flow",
      heading: "Engines with less fitted",
      symbol: "n_p",
      kind: "ratio",
      start: 1.8,
      limits: [1, 2],
      typical: [1.4, 2],
      help: "2 in rough ducts or headers alone, 1 where the flow is laminar. Common practice, no source: most cores with their headers lie between 1.7 and 1.9, a core of strip fins alone between 1.4 and 1.7.",
      when: byHardware,
    },
  },
  results: {
    ...creditOutcomes,
    ...changeOutcomes,
    Delta_D: {
      heading: "Charge in the manifold",
      label: "Density gained in all, as a multiple of the density at the inlet",
      symbol: "Delta_D",
      kind: "ratio",
    },
    D_rho: {
      label: "Density ratio, manifold to inlet",
      symbol: "D_rho",
      kind: "ratio",
    },
    rho_m: { label: "Density in the manifold", symbol: "rho_m", kind: "density" },
    T_m: { label: "Temperature in the manifold", symbol: "T_m", kind: "temperature" },
    p_m: { label: "Pressure in the manifold, absolute", symbol: "p_m", kind: "pressure" },
    work_C: {
      heading: "Work for it",
      label: "Work of the compressor per mass of air",
      symbol: "Delta_h",
      kind: "specificEnergy",
      when: one,
    },
    work_C1: {
      label: "Work of the first compressor per mass of air",
      symbol: "Delta_h",
      kind: "specificEnergy",
      when: two,
    },
    work_C2: {
      label: "Work of the second compressor per mass of air",
      symbol: "Delta_h",
      kind: "specificEnergy",
      when: two,
    },
    ...outfitOutcomes,
    ...stationOutcomes,
  } satisfies Record<string, Outcome>,
  relations: [
    ...isentropicRelations,
    ...condensingRelations,
    coolerOutletTemperature,
    pressureAfterLoss,
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
      notFitted,
    ),
    table(
      ["Loss, first cooler", "Loss, second cooler", "Pressure", "Temperature", "Density over inlet"],
      outfitRows.two,
      { ...byHardware, ...two },
      "The manifold of the same engine with only some of the hardware.",
      notFitted,
    ),
    table(atStations, stationRows.one, { ...byChanges, ...one }, "The air on its way."),
    table(atStations, stationRows.two, { ...byChanges, ...two }, "The air on its way."),
  ],
});
