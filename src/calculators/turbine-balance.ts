import { turbineBalance } from "../../calc/charge/turbine-balance.ts";
import { densityRatio } from "../../calc/compression/density-ratio.ts";
import { turbineNeededTemperature } from "../../calc/compression/turbine-needed-temperature.ts";
import { exchangePower } from "../../calc/engine/exchange-power.ts";
import { volumetricEfficiency } from "../../calc/engine/volumetric-efficiency.ts";
import { pressureAfterLoss } from "../../calc/flow/pressure-after-loss.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { compressorInputs, pressureRatioField } from "./parts/compressor.ts";
import { engineInputs } from "./parts/engine.ts";
import { inletInputs } from "./parts/inlet.ts";
import { compressorRelations } from "./parts/relations.ts";
import { turbineInputs, turbineRelations } from "./parts/turbine.ts";

const byRatio = { known: ["ratio"] } as const;
const byPower = { known: ["power"] } as const;

export default defineCalculator({
  id: "turbine-balance",
  title: "Turbine balance",
  group: "Compression",
  asks: "How much must the exhaust be held back to drive this compressor?",
  inputs: {
    m_a: {
      label: "Air flow",
      heading: "Air and compressor",
      symbol: "m_a",
      kind: "massFlow",
      start: 0.154,
      limits: [1e-4, 500],
      typical: [0.01, 20],
      help: "Moist air, through compressor and engine.",
    },
    w: inletInputs.w,
    known: {
      label: "What is known of the compressor",
      options: { ratio: "its pressure ratio and efficiency", power: "its shaft power" },
      start: "ratio",
      help: "",
    },
    p_1: { ...inletInputs.p_1, start: 99_000, when: byRatio },
    T_1: { ...inletInputs.T_1, when: byRatio },
    r: { ...pressureRatioField, when: byRatio },
    efficiency: { ...compressorInputs.efficiency, when: byRatio },
    eta_s: compressorInputs.eta_s,
    eta_p: compressorInputs.eta_p,
    heatCapacity: { ...compressorInputs.heatCapacity, when: byRatio },
    kappa: compressorInputs.kappa,
    Delta_p_23: {
      label: "Pressure lost from compressor to manifold",
      symbol: "Delta_p_23",
      kind: "pressureDifference",
      start: 6000,
      limits: [0, 200_000],
      typical: [0, 20_000],
      help: "Cooler and ducts.",
      when: byRatio,
    },
    W_c: {
      label: "Shaft power of the compressor",
      symbol: "W_c",
      kind: "power",
      start: 15_700,
      limits: [0, 20_000_000],
      typical: [500, 2_000_000],
      help: "",
      when: byPower,
    },
    p_m: {
      label: "Pressure in the manifold",
      symbol: "p_m",
      kind: "pressure",
      start: 212_000,
      limits: [10_000, 3_000_000],
      typical: [80_000, 600_000],
      help: "",
      when: byPower,
    },
    ...turbineInputs,
    eta_T: { ...turbineInputs.eta_T, heading: "Turbine and exhaust" },
    x_wg: {
      label: "Share of the exhaust that bypasses the turbine",
      symbol: "x_wg",
      kind: "fraction",
      start: 0,
      limits: [0, 0.9],
      typical: [0, 0.4],
      help: "Through an open waste gate.",
    },
    V_d: { ...engineInputs.V_d, heading: "Four-stroke engine" },
    n: engineInputs.n,
    T_m: {
      label: "Temperature in the manifold",
      symbol: "T_m",
      kind: "temperature",
      start: 323.15,
      limits: [223.15, 573.15],
      typical: [273.15, 393.15],
      help: "Decides only how far the engine is filled.",
    },
  },
  results: {
    p_T: {
      heading: "Pressures",
      label: "Pressure before the turbine, absolute",
      symbol: "p_T",
      kind: "pressure",
    },
    p_m: { label: "Pressure in the manifold, absolute", symbol: "p_m", kind: "pressure" },
    r_T: { label: "Expansion ratio of the turbine", symbol: "r_T", kind: "ratio" },
    p_gx: {
      heading: "Exchange of the charge",
      label: "Mean effective pressure of the gas exchange, negative where it costs",
      symbol: "p_gx",
      kind: "pressureDifference",
    },
    W_gx: {
      label: "Power of the gas exchange, negative where it costs",
      symbol: "W_gx",
      kind: "power",
    },
    eta_v: { label: "Volumetric efficiency that the air flow takes", symbol: "eta_v", kind: "fraction" },
    W_c: {
      heading: "Turbocharger and exhaust",
      label: "Shaft power of the compressor",
      symbol: "W_c",
      kind: "power",
      when: byRatio,
    },
    W_T: { label: "Power of the turbine", symbol: "W_T", kind: "power" },
    m_g: { label: "Exhaust gas flow", symbol: "m_g", kind: "massFlow" },
    T_g_out: { label: "Exhaust temperature after the turbine", symbol: "T_g_out", kind: "temperature" },
    T_g_even: {
      label: "Exhaust temperature at which turbine inlet and manifold have one pressure",
      symbol: "T_g",
      kind: "temperature",
    },
  },
  relations: [
    ...compressorRelations.filter((one) => one !== densityRatio),
    pressureAfterLoss,
    ...turbineRelations,
    turbineNeededTemperature,
    exchangePower,
    volumetricEfficiency,
  ],
  model: (given, trace) =>
    turbineBalance(given as unknown as Parameters<typeof turbineBalance>[0], trace) as unknown as ReturnType<
      Calculator["model"]
    >,
  pictures: [
    {
      draw: "chart",
      vary: "T_g",
      span: [723.15, 1273.15],
      x: "T_g",
      y: "p_T",
      curves: [{ label: "before the turbine" }, { label: "in the manifold", dash: "ideal", y: "p_m" }],
      title: "Pressure before the turbine against exhaust temperature: hot gas has to be held back less.",
    },
  ],
});
