import { explicit } from "../../relation/relation.ts";

/**
 * The difference between the inlets over that between entering air and leaving water, for two passes of one channel each
 * against the air, from the share Gamma that the air loses in one pass; R on the air.
 *
 * @example hotEndRatio2.compute({ Gamma: 0.6, R: 0.5 }) // 1.575
 */
export const hotEndRatio2 = explicit({
  id: "exchanger/effectiveness/hot-end-ratio-2",
  title: "Ratio of differences at the hot end, two passes",
  inputs: { Gamma: { symbol: "Gamma", kind: "fraction" }, R: { symbol: "R", kind: "ratio" } },
  result: { symbol: "xi_2", kind: "ratio" },
  name: "xi_2",
  expression: "0.5 * Gamma + (1 - 0.5 * Gamma) * exp(2 * R * Gamma)",
  sources: [
    { key: "nicole-1972", where: "two rows in two passes", standing: "from memory" },
    { key: "thulukkanam-2013", where: "table of multipass counter-cross-flow", standing: "from memory" },
  ],
  compute: ({ Gamma, R }) => Gamma / 2 + (1 - Gamma / 2) * Math.exp(2 * R * Gamma),
});
