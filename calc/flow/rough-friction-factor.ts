import { explicit } from "../relation/relation.ts";

/**
 * Darcy friction factor to which a rough pipe tends at a large Reynolds number, roughness k_s and bore d in m.
 *
 * @example roughFrictionFactor.compute({ k_s: 0.045e-3, d: 0.1 }) // 0.01631
 */
export const roughFrictionFactor = explicit({
  id: "flow/rough-friction-factor",
  title: "Friction factor of a fully rough pipe",
  inputs: {
    k_s: { symbol: "k_s", kind: "length" },
    d: { symbol: "d", kind: "length" },
  },
  result: { symbol: "f_T", kind: "ratio" },
  expression: "(2 * log(3.7 * d / k_s) / log(10))^(-2)",
  sources: [{ key: "colebrook-1939", where: "limit of fully rough flow", standing: "from memory" }],
  compute: ({ k_s, d }) => ((2 * Math.log((3.7 * d) / k_s)) / Math.LN10) ** -2,
});
