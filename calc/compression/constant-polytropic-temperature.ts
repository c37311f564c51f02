import { explicit } from "../relation/relation.ts";

/**
 * Temperature in K after compression of polytropic efficiency eta_p, with one heat-capacity ratio throughout.
 *
 * @example constantPolytropicTemperature.compute({ T_in: 298.15, r: 3, kappa: 1.4, eta_p: 0.8 }) // 441.4 K
 */
export const constantPolytropicTemperature = explicit({
  id: "compression/constant-polytropic-temperature",
  title: "Temperature after compression of given polytropic efficiency, constant heat capacity",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    r: { symbol: "r", kind: "ratio" },
    kappa: { symbol: "kappa", kind: "ratio" },
    eta_p: { symbol: "eta_p", kind: "fraction" },
  },
  result: { symbol: "T_out", kind: "temperature" },
  expression: "T_in * r^((kappa - 1) / (kappa * eta_p))",
  sources: [{ key: "dixon-hall", where: "chapter 1, efficiencies of compressors", standing: "from memory" }],
  compute: ({ T_in, r, kappa, eta_p }) => T_in * r ** ((kappa - 1) / (kappa * eta_p)),
});
