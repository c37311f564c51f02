import { explicit } from "../../relation/relation.ts";

/**
 * Part of the dynamic pressure in a valve by which its static pressure falls as the liquid speeds up from the pipe: bores of the
 * valve d_v and the pipe d in m.
 *
 * @example bernoulliCoefficient.compute({ d_v: 0.057, d: 0.08 }) // 0.74229
 */
export const bernoulliCoefficient = explicit({
  id: "circuit/valve/bernoulli-coefficient",
  title: "Change of dynamic pressure at a valve",
  inputs: {
    d_v: { symbol: "d_v", kind: "length" },
    d: { symbol: "d", kind: "length" },
  },
  result: { symbol: "K_B", kind: "ratio" },
  expression: "1 - (d_v / d)^4",
  sources: [{ key: "iec-60534-2-1", where: "Bernoulli coefficients", standing: "from memory" }],
  compute: ({ d_v, d }) => 1 - (d_v / d) ** 4,
});
