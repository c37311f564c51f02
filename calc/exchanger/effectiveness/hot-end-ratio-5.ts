import { explicit } from "../../relation/relation.ts";

/**
 * The difference between the inlets over that between entering air and leaving water, for five passes of one channel each
 * against the air, from the share Gamma that the air loses in one pass; R on the air.
 *
 * @example hotEndRatio5.compute({ Gamma: 0.6, R: 0.5 }) // 1.882
 */
export const hotEndRatio5 = explicit({
  id: "exchanger/effectiveness/hot-end-ratio-5",
  title: "Ratio of differences at the hot end, five passes",
  inputs: { Gamma: { symbol: "Gamma", kind: "fraction" }, R: { symbol: "R", kind: "ratio" } },
  result: { symbol: "xi_5", kind: "ratio" },
  name: "xi_5",
  expression:
    "Gamma * (1 - 0.75 * Gamma + 0.5 * Gamma^2 - 0.125 * Gamma^3) * exp(R * Gamma) - R * Gamma^2 * (1 - Gamma + 0.75 * Gamma^2 - 0.25 * Gamma^3) * exp(R * Gamma) + 0.5 * R^2 * Gamma^4 * (1 - 0.5 * Gamma)^2 * exp(R * Gamma) + Gamma * (1 - 0.75 * Gamma + 0.0625 * Gamma^3) * exp(3 * R * Gamma) - 3 * R * Gamma^2 * (1 - 0.5 * Gamma)^3 * exp(3 * R * Gamma) + (1 - 0.5 * Gamma)^4 * exp(5 * R * Gamma)",
  sources: [
    { key: "nicole-1972", where: "five rows in five passes", standing: "from memory" },
    { key: "thulukkanam-2013", where: "table of multipass counter-cross-flow", standing: "from memory" },
  ],
  compute: ({ Gamma, R }) => {
    const h = 1 - Gamma / 2;
    const e = Math.exp(R * Gamma);
    const one =
      Gamma * (1 - Gamma * (0.75 - Gamma * (0.5 - 0.125 * Gamma))) -
      R * Gamma ** 2 * (1 - Gamma * (1 - Gamma * (0.75 - 0.25 * Gamma))) +
      (R ** 2 / 2) * Gamma ** 4 * h ** 2;
    const three = Gamma * (1 - 0.75 * Gamma + Gamma ** 3 / 16) - 3 * R * Gamma ** 2 * h ** 3;
    return (one + (three + h ** 4 * e * e) * e * e) * e;
  },
});
