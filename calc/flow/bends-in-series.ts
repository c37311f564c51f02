import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a number of like bends, each far enough from the next: closer than ten bores they disturb each other.
 *
 * @example bendsInSeries.compute({ N_b: 3, K_1: 0.2254 }) // 0.6762
 */
export const bendsInSeries = explicit({
  id: "flow/bends-in-series",
  title: "Loss coefficient of several bends",
  inputs: {
    N_b: { symbol: "N_b", kind: "ratio" },
    K_1: { symbol: "K_1", kind: "ratio" },
  },
  result: { symbol: "K_b", kind: "ratio" },
  expression: "N_b * K_1",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, minor losses in series", standing: "from memory" },
  ],
  compute: ({ N_b, K_1 }) => N_b * K_1,
});
