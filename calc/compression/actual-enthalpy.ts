import { explicit } from "../relation/relation.ts";

/**
 * Enthalpy in J/kg after a compressor of isentropic efficiency eta_s (above 0 to 1); h_s is the end of ideal compression.
 *
 * @example actualEnthalpy.compute({ h_in: 25000, h_s: 100000, eta_s: 0.75 }) // 125 000 J/kg
 */
export const actualEnthalpy = explicit({
  id: "compression/actual-enthalpy",
  title: "Enthalpy after the compressor",
  inputs: {
    h_in: { symbol: "h_in", kind: "specificEnergy" },
    h_s: { symbol: "h_s", kind: "specificEnergy" },
    eta_s: { symbol: "eta_s", kind: "fraction" },
  },
  result: { symbol: "h_out", kind: "specificEnergy" },
  expression: "h_in + (h_s - h_in) / eta_s",
  sources: [
    { key: "moran-shapiro", where: "chapters 6 and 9, compression of an ideal gas", standing: "from memory" },
  ],
  compute: ({ h_in, h_s, eta_s }) => h_in + (h_s - h_in) / eta_s,
});
