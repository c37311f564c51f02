import { type TwoStageSplitGiven, twoStageSplit } from "../../calc/charge/two-stage-split.ts";
import { drivePower } from "../../calc/compression/drive-power.ts";
import { leastWorkRatio } from "../../calc/compression/least-work-ratio.ts";
import { pressureRatio } from "../../calc/compression/pressure-ratio.ts";
import { totalPower } from "../../calc/compression/total-power.ts";
import { weightedPower } from "../../calc/compression/weighted-power.ts";
import { dryAirFlow } from "../../calc/engine/dry-air-flow.ts";
import { moistAirFlow } from "../../calc/engine/moist-air-flow.ts";
import { lossAsPart } from "../../calc/flow/loss-as-part.ts";
import { pressureBeforeLoss } from "../../calc/flow/pressure-before-loss.ts";
import { type Calculator, defineCalculator, type When } from "./engine/calculator.ts";
import { ambientInputs, inletLossField, isMoist } from "./parts/ambient.ts";
import { chargeInputs } from "./parts/charge.ts";
import { compressorInputs, pressureRatioField } from "./parts/compressor.ts";
import { coolerInputs, effectivenessField, waterInletField } from "./parts/cooler.ts";
import { driveEfficiencyField } from "./parts/drive.ts";
import { splitRelations, vapourRelations } from "./parts/relations.ts";

const withFirst = { cooler: ["effectiveness"] } as const;
const withSecond = { cooler_45: ["effectiveness"] } as const;
const limited = { limits: ["set"] } as const;
const given = { split: ["given"] } as const;

const driven = {
  label: "Driven by",
  options: { exhaust: "an exhaust turbine", crankshaft: "the crankshaft" },
  help: "",
} as const;

const fitted = {
  options: { effectiveness: "fitted, its effectiveness is known", none: "none" },
  start: "effectiveness",
  help: "",
} as const;

const temperatureLimit = {
  kind: "temperature",
  limits: [233.15, 773.15],
  when: limited as When,
} as const;

/** Both charts sweep the split. */
const overSplits = {
  draw: "chart",
  vary: "r_1",
  span: [1, 5],
  holding: { split: "given" },
  x: "r_1",
  best: { at: "r_1_best", label: "least" },
  bands: [{ from: "r_1_flat_from", to: "r_1_flat_to", label: "within 1\u00a0%" }],
  bounds: [
    { at: "r_1_from", label: "limit", wrong: "below" },
    { at: "r_1_to", label: "limit", wrong: "above" },
    { at: "r_1_end", label: "expands", wrong: "above" },
  ],
} as const;

export default defineCalculator({
  id: "two-stage-split",
  title: "Two-stage split",
  group: "Compression",
  asks: "How should two compressors in series share the pressure, and is a second one worth it?",
  inputs: {
    ...ambientInputs,
    heatCapacity: compressorInputs.heatCapacity,
    kappa: compressorInputs.kappa,
    Delta_p_01: inletLossField,
    m_a: { ...chargeInputs.m_a, start: 0.62, heading: "What is wanted" },
    p_m: {
      label: "Pressure in the manifold",
      symbol: "p_m",
      kind: "pressure",
      start: 420_000,
      limits: [20_000, 2_500_000],
      typical: [150_000, 1_000_000],
      help: "After the second cooler. Absolute, or what the gauge shall show.",
    },
    split: {
      label: "The split",
      options: { best: "the best one is sought", given: "the first one's ratio is given" },
      start: "best",
      help: "",
    },
    r_1: {
      ...pressureRatioField,
      label: "Pressure ratio of the first compressor",
      symbol: "r_1",
      start: 2,
      limits: [1, 10],
      when: given,
    },
    least: {
      label: "What counts as best",
      options: {
        shaft: "the least shaft power of both",
        crankshaft: "the least cost to the crankshaft",
      },
      start: "shaft",
      help: "",
    },
    chi_g: {
      label: "Cost of a watt from the exhaust",
      symbol: "chi_g",
      kind: "fraction",
      start: 0.6,
      limits: [0.01, 2],
      typical: [0.1, 1],
      help: "What one watt more of shaft power takes from gas exchange. Turbine balance shows it.",
      when: { least: ["crankshaft"] },
    },
    drive: { ...driven, start: "crankshaft", heading: "First compressor and its cooler" },
    eta_s: { ...compressorInputs.eta_s, start: 0.6, when: {} },
    cooler: { ...fitted, label: "Cooler between the compressors" },
    P: { ...effectivenessField, symbol: "P", start: 0.8, when: withFirst },
    T_w_in: { ...waterInletField, symbol: "T_w_in", start: 303.15, when: withFirst },
    loss: {
      label: "Its loss is known as",
      options: { pressure: "a pressure", part: "a part of the pressure before it" },
      start: "pressure",
      help: "",
      when: withFirst,
    },
    Delta_p_23: { ...coolerInputs.Delta_p_23, when: { ...withFirst, loss: ["pressure"] } },
    zeta: {
      label: "Part of the pressure lost in the cooler",
      symbol: "zeta",
      kind: "fraction",
      start: 0.03,
      limits: [0, 0.9],
      typical: [0, 0.08],
      help: "",
      when: { ...withFirst, loss: ["part"] },
    },
    drive_2: { ...driven, start: "exhaust", heading: "Second compressor and its cooler" },
    eta_s_2: {
      ...compressorInputs.eta_s,
      label: "Isentropic efficiency of the second",
      symbol: "eta_s_2",
      start: 0.76,
      when: {},
    },
    cooler_45: { ...fitted, label: "Cooler after the second compressor" },
    P_45: {
      ...effectivenessField,
      label: "Temperature effectiveness of that cooler",
      symbol: "P_45",
      start: 0.85,
      when: withSecond,
    },
    T_w_in_45: {
      ...waterInletField,
      label: `${waterInletField.label}, second cooler`,
      symbol: "T_w_in_45",
      start: 303.15,
      when: withSecond,
    },
    Delta_p_45: {
      ...coolerInputs.Delta_p_23,
      label: "Pressure lost in the second cooler",
      symbol: "Delta_p_45",
      start: 7000,
      when: withSecond,
    },
    eta_b: {
      ...driveEfficiencyField,
      heading: "Drive from the crankshaft",
      help: `${driveEfficiencyField.help} Only for a compressor that the crankshaft drives.`,
    },
    limits: {
      label: "Limits of the hardware",
      options: { none: "left out", set: "kept to" },
      start: "none",
      help: "",
      heading: "Limits",
    },
    T_2_most: {
      ...temperatureLimit,
      label: "Highest temperature after the first compressor",
      symbol: "T_2",
      start: 453.15,
      help: "Wheel, hose, gaskets.",
    },
    T_3_most: {
      ...temperatureLimit,
      label: "Highest temperature into the second compressor",
      symbol: "T_3",
      start: 343.15,
      help: "",
    },
    T_4_most: {
      ...temperatureLimit,
      label: "Highest temperature after the second compressor",
      symbol: "T_4",
      start: 473.15,
      help: "Wheels of aluminium, common practice, no source: 150 to 230 °C. The maker's limit counts.",
    },
    W_b_most: {
      label: "Most power from the crankshaft",
      symbol: "W_b",
      kind: "power",
      start: 60_000,
      limits: [1, 20_000_000],
      help: "What belt or gears carry.",
      when: limited,
    },
    r_1_most: {
      ...pressureRatioField,
      label: "Highest ratio of the first",
      symbol: "r_1",
      start: 2.2,
      limits: [1, 10],
      help: "From its map.",
      when: limited,
    },
    r_2_most: {
      ...pressureRatioField,
      label: "Highest ratio of the second",
      symbol: "r_2",
      start: 3.5,
      limits: [1, 10],
      help: "From its map.",
      when: limited,
    },
  },
  results: {
    r_1: { label: "Pressure ratio of the first compressor", symbol: "r_1", kind: "ratio" },
    r_2: { label: "Pressure ratio of the second compressor", symbol: "r_2", kind: "ratio" },
    W_c12: { label: "Shaft power of both", symbol: "W_c12", kind: "power" },
    W_c1: { label: "Shaft power of the first", symbol: "W_c1", kind: "power" },
    W_c2: { label: "Shaft power of the second", symbol: "W_c2", kind: "power" },
    W_b: { label: "Power from the crankshaft", symbol: "W_b", kind: "power" },
    W_x: {
      label: "Cost of both to the crankshaft",
      symbol: "W_x",
      kind: "power",
      when: { least: ["crankshaft"] },
    },
    T_2: {
      label: "Temperature after the first compressor",
      symbol: "T_2",
      kind: "temperature",
      heading: "State of the air",
    },
    T_3: { label: "Temperature into the second", symbol: "T_3", kind: "temperature" },
    T_4: { label: "Temperature after the second", symbol: "T_4", kind: "temperature" },
    T_m: { label: "Temperature in the manifold", symbol: "T_m", kind: "temperature" },
    rho_m: { label: "Density in the manifold", symbol: "rho_m", kind: "density" },
    Q: { label: "Heat taken out between the compressors", symbol: "Q", kind: "heatFlow", when: withFirst },
    Q_45: { label: "Heat taken out after the second", symbol: "Q_45", kind: "heatFlow", when: withSecond },
    r_1_best: {
      label: "First ratio of least cost",
      symbol: "r_1",
      kind: "ratio",
      when: given,
      heading: "Room to choose",
    },
    W_best: { label: "Shaft power of both there", symbol: "W_c12", kind: "power", when: given },
    r_1_flat_from: { label: "Lowest first ratio within 1\u00a0% of the best", symbol: "r_1", kind: "ratio" },
    r_1_flat_to: { label: "Highest such ratio", symbol: "r_1", kind: "ratio" },
    r_1_from: { label: "Lowest first ratio within the limits", symbol: "r_1", kind: "ratio", when: limited },
    r_1_to: { label: "Highest ratio within them", symbol: "r_1", kind: "ratio", when: limited },
    W_equal: {
      label: "Shaft power with equal ratios",
      symbol: "W_c12",
      kind: "power",
      heading: "Compared with others",
    },
    W_single: { label: "Shaft power of the better one alone", symbol: "W_c", kind: "power" },
    T_single: { label: "Temperature after it", symbol: "T_out", kind: "temperature" },
    W_no_cooler: {
      label: "Shaft power of both without the cooler between, same first ratio",
      symbol: "W_c12",
      kind: "power",
      when: withFirst,
    },
    T_4_no_cooler: {
      label: "Temperature after the second without it",
      symbol: "T_4",
      kind: "temperature",
      when: withFirst,
    },
    Delta_p_even: {
      label: "Break-even loss of the cooler between",
      symbol: "Delta_p_be",
      kind: "pressureDifference",
      when: withFirst,
    },
    r_1_rule: {
      label: "First ratio if that cooler were perfect",
      symbol: "r_1",
      kind: "ratio",
      when: withFirst,
    },
    r_1_end: {
      label: "First ratio at which the second does nothing",
      symbol: "r_1",
      kind: "ratio",
      inPicture: true,
    },
    m_c: {
      heading: "Water",
      label: "Water condensing between the compressors",
      symbol: "m_c",
      kind: "massFlow",
      when: { ...withFirst, ...isMoist },
    },
    m_c_45: {
      label: "Water condensing after the second",
      symbol: "m_c_45",
      kind: "massFlow",
      when: { ...withSecond, ...isMoist },
    },
  },
  relations: [
    ...vapourRelations,
    ...splitRelations,
    dryAirFlow,
    moistAirFlow,
    pressureRatio,
    pressureBeforeLoss,
    lossAsPart,
    totalPower,
    weightedPower,
    drivePower,
    leastWorkRatio,
  ],
  model: (known, trace) => {
    return twoStageSplit(known as unknown as TwoStageSplitGiven, trace) as unknown as ReturnType<
      Calculator["model"]
    >;
  },
  pictures: [
    {
      ...overSplits,
      when: { least: ["shaft"] },
      y: "W_c12",
      curves: [
        { label: "with the cooler between" },
        { label: "without it", dash: "alternative", y: "W_no_cooler" },
        { label: "one compressor alone", dash: "ideal", y: "W_single" },
      ],
      title: "Shaft power of both against the ratio of the first. The ring is the split above.",
    },
    {
      ...overSplits,
      y: "W_x",
      curves: [{ label: "both together" }],
      title: "Cost of both to the crankshaft against the ratio of the first. The ring is the split above.",
    },
  ],
});
