import { explicit } from "../relation/relation.ts";

/**
 * The ratio that most books use, never above 1, from that of air over water.
 *
 * @example smallerRatio.compute({ R: 2 }) // 0.5
 */
export const smallerRatio = explicit({
  id: "exchanger/smaller-ratio",
  title: "Smaller heat-capacity rate over the larger",
  inputs: {
    R: { symbol: "R", kind: "ratio" },
  },
  result: { symbol: "C_star", kind: "ratio" },
  expression: "min(R, 1 / R)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, heat-capacity rate ratio", standing: "from memory" },
  ],
  compute: ({ R }) => Math.min(R, 1 / R),
});
