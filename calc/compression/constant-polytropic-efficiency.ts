import { explicit } from "../relation/relation.ts";

/**
 * Efficiency of every small part of the compression, with one heat-capacity ratio throughout.
 *
 * @example constantPolytropicEfficiency.compute({ kappa: 1.4, r: 3, T_in: 298.15, T_out: 441.4 }) // 0.8
 */
export const constantPolytropicEfficiency = explicit({
  id: "compression/constant-polytropic-efficiency",
  title: "Polytropic efficiency, constant heat capacity",
  inputs: {
    kappa: { symbol: "kappa", kind: "ratio" },
    r: { symbol: "r", kind: "ratio" },
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "eta_p", kind: "fraction" },
  expression: "((kappa - 1) / kappa) * (log(r) / log(T_out / T_in))",
  sources: [{ key: "dixon-hall", where: "chapter 1, efficiencies of compressors", standing: "from memory" }],
  compute: ({ kappa, r, T_in, T_out }) => ((kappa - 1) / kappa) * (Math.log(r) / Math.log(T_out / T_in)),
});
