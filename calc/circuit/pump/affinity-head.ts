import { explicit } from "../../relation/relation.ts";

/**
 * Head in m of a pump at another speed, at the matching point of its curve.
 *
 * @example affinityHead.compute({ h_ref: 30, n: 40, n_ref: 48 }) // 20.833 m
 */
export const affinityHead = explicit({
  id: "circuit/pump/affinity-head",
  title: "Pump at another speed, head",
  inputs: {
    h_ref: { symbol: "h_ref", kind: "head" },
    n: { symbol: "n", kind: "rotationalSpeed" },
    n_ref: { symbol: "n_ref", kind: "rotationalSpeed" },
  },
  result: { symbol: "h_P", kind: "head" },
  expression: "h_ref * (n / n_ref)^2",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 11, similarity rules of pumps", standing: "from memory" },
  ],
  compute: ({ h_ref, n, n_ref }) => h_ref * (n / n_ref) ** 2,
});
