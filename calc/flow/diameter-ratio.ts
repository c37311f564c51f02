import { explicit } from "../relation/relation.ts";

/**
 * The smaller bore over the larger, both in m.
 *
 * @example diameterRatio.compute({ d: 0.076, d_l: 0.1 }) // 0.76
 */
export const diameterRatio = explicit({
  id: "flow/diameter-ratio",
  title: "Ratio of two bores",
  inputs: {
    d: { symbol: "d", kind: "length" },
    d_l: { symbol: "d_l", kind: "length" },
  },
  result: { symbol: "beta_d", kind: "ratio" },
  expression: "d / d_l",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, minor losses in pipes", standing: "from memory" },
  ],
  compute: ({ d, d_l }) => d / d_l,
});
