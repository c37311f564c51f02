import { explicit } from "../relation/relation.ts";

/**
 * Ideal over real rise of enthalpy, all in J/kg.
 *
 * @example isentropicEfficiency.compute({ h_in: 25000, h_s: 100000, h_out: 125000 }) // 0.75
 */
export const isentropicEfficiency = explicit({
  id: "compression/isentropic-efficiency",
  title: "Isentropic efficiency",
  inputs: {
    h_in: { symbol: "h_in", kind: "specificEnergy" },
    h_s: { symbol: "h_s", kind: "specificEnergy" },
    h_out: { symbol: "h_out", kind: "specificEnergy" },
  },
  result: { symbol: "eta_s", kind: "fraction" },
  expression: "(h_s - h_in) / (h_out - h_in)",
  sources: [
    { key: "moran-shapiro", where: "chapters 6 and 9, compression of an ideal gas", standing: "from memory" },
  ],
  compute: ({ h_in, h_s, h_out }) => (h_s - h_in) / (h_out - h_in),
});
