import { explicit } from "../../relation/relation.ts";

/**
 * The difference between the inlets over that between entering air and leaving water, for three passes of one channel each
 * against the air, from the share Gamma that the air loses in one pass; R on the air.
 *
 * @example hotEndRatio3.compute({ Gamma: 0.6, R: 0.5 }) // 1.724
 */
export const hotEndRatio3 = explicit({
  id: "exchanger/effectiveness/hot-end-ratio-3",
  title: "Ratio of differences at the hot end, three passes",
  inputs: { Gamma: { symbol: "Gamma", kind: "fraction" }, R: { symbol: "R", kind: "ratio" } },
  result: { symbol: "xi_3", kind: "ratio" },
  name: "xi_3",
  expression:
    "Gamma * (1 - 0.25 * Gamma - R * Gamma * (1 - 0.5 * Gamma)) * exp(R * Gamma) + (1 - 0.5 * Gamma)^2 * exp(3 * R * Gamma)",
  sources: [
    { key: "nicole-1972", where: "three rows in three passes", standing: "from memory" },
    { key: "thulukkanam-2013", where: "table of multipass counter-cross-flow", standing: "from memory" },
  ],
  compute: ({ Gamma, R }) => {
    const h = 1 - Gamma / 2;
    const e = Math.exp(R * Gamma);
    return (Gamma * (1 - Gamma / 4 - R * Gamma * h) + h * h * e * e) * e;
  },
});
