import { explicit } from "../../relation/relation.ts";

/**
 * The difference between the inlets over that between entering air and leaving water, for two passes of one channel each
 * against the air whose water runs the same way in both, from the share Gamma that the air loses in one pass; R on the
 * air.
 *
 * @example hotEndRatio2Crossover.compute({ Gamma: 0.6, R: 0.5 }) // 1.579
 */
export const hotEndRatio2Crossover = explicit({
  id: "exchanger/effectiveness/hot-end-ratio-2-crossover",
  title: "Ratio of differences at the hot end, two passes led across",
  inputs: { Gamma: { symbol: "Gamma", kind: "fraction" }, R: { symbol: "R", kind: "ratio" } },
  result: { symbol: "xi_2c", kind: "ratio" },
  name: "xi_2c",
  expression: "exp(2 * R * Gamma) - R * Gamma^2 * exp(R * Gamma)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, equations of one row, applied pass by pass",
      standing: "derived here",
    },
  ],
  compute: ({ Gamma, R }) => Math.exp(2 * R * Gamma) - R * Gamma ** 2 * Math.exp(R * Gamma),
});
