import { breakEvenLoss } from "../../calc/charge/break-even-loss.ts";
import { coolerGain } from "../../calc/charge/cooler-gain.ts";
import { lossForDensity } from "../../calc/charge/loss-for-density.ts";
import { drivePower } from "../../calc/compression/drive-power.ts";
import { pressureRatio } from "../../calc/compression/pressure-ratio.ts";
import { flowAtDensity } from "../../calc/engine/flow-at-density.ts";
import { moistAirFlow } from "../../calc/engine/moist-air-flow.ts";
import { coolerOutletTemperature } from "../../calc/exchanger/cooler-outlet-temperature.ts";
import { pressureAfterLoss } from "../../calc/flow/pressure-after-loss.ts";
import {
  type Calculator,
  defineCalculator,
  type Field,
  type Outcome,
  type When,
} from "./engine/calculator.ts";
import { compressorInputs, pressureRatioField } from "./parts/compressor.ts";
import { coolerInputs, effectivenessField, waterInletField } from "./parts/cooler.ts";
import { driveEfficiencyField } from "./parts/drive.ts";
import { inletInputs } from "./parts/inlet.ts";
import { compressorRelations, condensingRelations } from "./parts/relations.ts";
import { turbineInputs, turbineRelations } from "./parts/turbine.ts";

const byEffectiveness = { cooler: ["effectiveness"] } as const;
const byTemperature = { cooler: ["temperature"] } as const;
const fromCrankshaft = { drive: ["crankshaft"] } as const;
const fromExhaust = { drive: ["exhaust"] } as const;

/** The engines that are compared, as rows of the table. */
const rows = [
  ["cooled", "with the cooler"],
  ["outlet", "without it, same compressor outlet"],
  ["pressure", "without it, same manifold pressure"],
  ["density", "without it, same density"],
] as const;

/** Columns of the table, and the outcome of each engine that stands in it. */
const columns = {
  r: ["Pressure ratio", { symbol: "r", kind: "ratio" }],
  T: ["Charge temperature", { symbol: "T_m", kind: "temperature" }],
  p: ["Manifold pressure", { symbol: "p_m", kind: "pressure" }],
  rho: ["Density", { symbol: "rho_m", kind: "density" }],
  W_c: ["Shaft power", { symbol: "W_c", kind: "power" }],
  W_b: ["From the crankshaft", { symbol: "W_b", kind: "power", when: fromCrankshaft }],
  p_T: ["Before the turbine", { symbol: "p_T", kind: "pressure", when: fromExhaust }],
  p_gx: ["Gas exchange", { symbol: "p_gx", kind: "pressureDifference", when: fromExhaust }],
} as const satisfies Record<string, readonly [string, Omit<Outcome, "label">]>;

type InTable = `${keyof typeof columns}_${(typeof rows)[number][0]}`;

const inTable = Object.fromEntries(
  Object.entries(columns).flatMap(([what, [title, outcome]]) =>
    rows.map(([which, engine]) => [
      `${what}_${which}`,
      { ...outcome, label: `${title}, ${engine}`, inPicture: true },
    ]),
  ),
) as Record<InTable, Outcome>;

const tableOf = (...shown: readonly (keyof typeof columns)[]) => ({
  draw: "states" as const,
  columns: shown.map((what) => columns[what][0]),
  rows: rows.map(([which, label]) => ({
    label,
    values: shown.map((what): InTable => `${what}_${which}`),
  })),
});

/** Fields that stand only where the choice makes sense. */
const shownWith = <K extends string>(fields: Readonly<Record<K, Field>>, when: When): Record<K, Field> =>
  Object.fromEntries(Object.entries<Field>(fields).map(([id, field]) => [id, { ...field, when }])) as Record<
    K,
    Field
  >;

export default defineCalculator({
  id: "cooler-gain",
  title: "What the cooler earns",
  group: "Cooling",
  asks: "Is this charge cooler worth the pressure that it loses?",
  inputs: {
    ...inletInputs,
    p_1: { ...inletInputs.p_1, heading: "Air and compressor" },
    m_a: {
      label: "Air flow with the cooler",
      symbol: "m_a",
      kind: "massFlow",
      start: 0.243,
      limits: [1e-4, 500],
      typical: [0.01, 20],
      help: "Moist air, into the compressor.",
    },
    r: { ...pressureRatioField, start: 2.25 },
    ...compressorInputs,
    eta_s: { ...compressorInputs.eta_s, start: 0.72 },
    cooler: {
      label: "What is known of the cooler",
      heading: "Charge cooler",
      options: { effectiveness: "its effectiveness", temperature: "its outlet temperature" },
      start: "effectiveness",
      help: "",
    },
    P: { ...effectivenessField, symbol: "P", when: byEffectiveness },
    T_w_in: { ...waterInletField, symbol: "T_w_in", when: byEffectiveness },
    T_3: { ...coolerInputs.T_3, when: byTemperature },
    Delta_p_23: { ...coolerInputs.Delta_p_23, start: 9000 },
    drive: {
      label: "What turns the compressor",
      heading: "Drive",
      options: { exhaust: "a turbine in the exhaust", crankshaft: "the crankshaft, by belt or gears" },
      start: "exhaust",
      help: "",
    },
    eta_b: { ...driveEfficiencyField, when: fromCrankshaft },
    ...shownWith(turbineInputs, fromExhaust),
  },
  results: {
    D_outlet: {
      heading: "Same compressor outlet",
      label: "Air capacity over that without the cooler",
      symbol: "D_rho",
      kind: "ratio",
    },
    Delta_p_outlet: {
      label: "Break-even loss",
      symbol: "Delta_p_be",
      kind: "pressureDifference",
    },
    D_pressure: {
      heading: "Same manifold pressure",
      label: "Air capacity over that without the cooler",
      symbol: "D_rho",
      kind: "ratio",
    },
    more_pressure: {
      label: "Extra work per mass of air",
      symbol: "Delta_h_ex",
      kind: "specificEnergy",
    },
    Delta_p_pressure: {
      label: "Break-even loss",
      symbol: "Delta_p_be",
      kind: "pressureDifference",
      when: byEffectiveness,
    },
    r_needed: {
      heading: "Same air",
      label: "Pressure ratio needed without the cooler",
      symbol: "r_u",
      kind: "ratio",
    },
    saved_density: { label: "Shaft power saved by the cooler", symbol: "Delta_W_c", kind: "power" },
    colder_density: {
      label: "Charge colder by",
      symbol: "Delta_T",
      kind: "temperatureDifference",
    },
    Delta_p_density: {
      label: "Break-even loss",
      symbol: "Delta_p_be",
      kind: "pressureDifference",
    },
    ...inTable,
  },
  relations: [
    ...compressorRelations,
    ...condensingRelations,
    ...turbineRelations,
    drivePower,
    pressureRatio,
    moistAirFlow,
    flowAtDensity,
    coolerOutletTemperature,
    pressureAfterLoss,
    breakEvenLoss,
    lossForDensity,
  ],
  model: (given, trace) => {
    const found = coolerGain(given as unknown as Parameters<typeof coolerGain>[0], trace);
    return { ...found, r_needed: found.r_density } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      vary: "Delta_p_23",
      span: [0, 60_000],
      x: "Delta_p_23",
      y: "D_outlet",
      bounds: [{ at: "Delta_p_outlet", label: "break-even", wrong: "above" }],
      curves: [{ label: "same compressor outlet" }],
      title: "Air capacity with the cooler over that without it, against what the cooler loses.",
    },
  ],
  also: [
    {
      ...tableOf("r", "T", "p", "rho", "W_c", "p_T", "p_gx"),
      when: fromExhaust,
      title: "The engine with the cooler, and three without it.",
      note: "Gas exchange is its mean effective pressure: negative where it costs.",
    },
    {
      ...tableOf("r", "T", "p", "rho", "W_c", "W_b"),
      when: fromCrankshaft,
      title: "The engine with the cooler, and three without it.",
    },
  ],
});
