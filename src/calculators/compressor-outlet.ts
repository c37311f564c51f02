import { compressorOutlet } from "../../calc/compression/compressor-outlet.ts";
import { pressureRatio } from "../../calc/compression/pressure-ratio.ts";
import { type Calculator, defineCalculator } from "./engine/calculator.ts";
import { compressorInputs, pressureRatioField } from "./parts/compressor.ts";
import { compressorRelations } from "./parts/relations.ts";

export default defineCalculator({
  id: "compressor-outlet",
  title: "Compressor outlet",
  group: "Compression",
  asks: "How hot does a compressor make the air, and what work does it take?",
  inputs: {
    p_in: {
      label: "Inlet pressure",
      heading: "Air at the inlet",
      symbol: "p_in",
      kind: "pressure",
      start: 99_000,
      limits: [10_000, 1_500_000],
      typical: [60_000, 600_000],
      help: "Total pressure at the compressor inlet, after filter and duct.",
    },
    T_in: {
      label: "Inlet temperature",
      symbol: "T_in",
      kind: "temperature",
      start: 298.15,
      limits: [223.15, 473.15],
      typical: [243.15, 393.15],
      help: "",
    },
    boost: {
      label: "How the compression is given",
      heading: "Compressor",
      options: { ratio: "as pressure ratio", pressure: "as outlet pressure" },
      start: "ratio",
      help: "",
    },
    r: { ...pressureRatioField, limits: [1, 12], typical: [1, 5], when: { boost: ["ratio"] } },
    p_out: {
      label: "Outlet pressure",
      symbol: "p_out",
      kind: "pressure",
      start: 217_800,
      limits: [10_000, 6_000_000],
      help: "A gauge reading is entered with a unit that says gauge.",
      when: { boost: ["pressure"] },
    },
    ...compressorInputs,
    m_a: {
      label: "Air flow",
      symbol: "m_a",
      kind: "massFlow",
      start: 0.154,
      limits: [0, 200],
      help: "Needed only for the shaft power.",
    },
  },
  results: {
    T_out: { label: "Outlet temperature", symbol: "T_out", kind: "temperature" },
    T_s: { label: "Outlet temperature of an ideal compressor", symbol: "T_s", kind: "temperature" },
    T_out_other: {
      label: "Outlet temperature with one constant κ of 1.4",
      symbol: "T_out_other",
      kind: "temperature",
      when: { heatCapacity: ["real"] },
    },
    T_out_real: {
      label: "Outlet temperature with the heat capacity as it is",
      symbol: "T_out_other",
      kind: "temperature",
      when: { heatCapacity: ["constant"] },
    },
    p_found: {
      label: "Outlet pressure, absolute",
      symbol: "p_out",
      kind: "pressure",
      when: { boost: ["ratio"] },
    },
    r_found: { label: "Pressure ratio", symbol: "r", kind: "ratio", when: { boost: ["pressure"] } },
    Delta_h: { label: "Work per mass of air", symbol: "Delta_h", kind: "specificEnergy" },
    W_c: { label: "Shaft power", symbol: "W_c", kind: "power" },
    eta_p_found: {
      label: "Polytropic efficiency",
      symbol: "eta_p",
      kind: "fraction",
      when: { efficiency: ["isentropic"] },
    },
    eta_s_found: {
      label: "Isentropic efficiency",
      symbol: "eta_s",
      kind: "fraction",
      when: { efficiency: ["polytropic"] },
    },
    rho_out: { label: "Outlet density", symbol: "rho_out", kind: "density" },
    D_rho: { label: "Density ratio, outlet to inlet", symbol: "D_rho", kind: "ratio" },
  },
  relations: [...compressorRelations, pressureRatio],
  model: (given, trace) => {
    const found = compressorOutlet(given as unknown as Parameters<typeof compressorOutlet>[0], trace);
    return {
      ...found,
      T_out_real: found.T_out_other,
      p_found: found.p_out,
      r_found: found.r,
      eta_p_found: found.eta_p,
      eta_s_found: found.eta_s,
    } as unknown as ReturnType<Calculator["model"]>;
  },
  pictures: [
    {
      draw: "chart",
      vary: "r",
      span: [1, 4],
      holding: { boost: "ratio" },
      x: "r_found",
      y: "T_out",
      curves: [{ label: "this compressor" }, { label: "an ideal one", dash: "ideal", y: "T_s" }],
      title: "Outlet temperature against pressure ratio.",
    },
  ],
});
