import { explicit } from "../../relation/relation.ts";

/**
 * The difference between the inlets over that between entering air and leaving water, for four passes of one channel each
 * against the air, from the share Gamma that the air loses in one pass; R on the air.
 *
 * @example hotEndRatio4.compute({ Gamma: 0.6, R: 0.5 }) // 1.82
 */
export const hotEndRatio4 = explicit({
  id: "exchanger/effectiveness/hot-end-ratio-4",
  title: "Ratio of differences at the hot end, four passes",
  inputs: { Gamma: { symbol: "Gamma", kind: "fraction" }, R: { symbol: "R", kind: "ratio" } },
  result: { symbol: "xi_4", kind: "ratio" },
  name: "xi_4",
  expression:
    "0.5 * Gamma * (1 - 0.5 * Gamma + 0.25 * Gamma^2) + Gamma * (1 - 0.5 * Gamma) * (1 - 2 * R * Gamma * (1 - 0.5 * Gamma)) * exp(2 * R * Gamma) + (1 - 0.5 * Gamma)^3 * exp(4 * R * Gamma)",
  sources: [
    {
      key: "nicole-1972",
      where:
        "four rows in four passes; the print was not seen, and a transcription in a public library of programs is wrong: this one is confirmed by a solution in two dimensions",
      standing: "derived here",
    },
  ],
  compute: ({ Gamma, R }) => {
    const h = 1 - Gamma / 2;
    const e = Math.exp(2 * R * Gamma);
    return (Gamma / 2) * (1 - (Gamma / 2) * h) + (Gamma * h * (1 - 2 * R * Gamma * h) + h ** 3 * e) * e;
  },
});
