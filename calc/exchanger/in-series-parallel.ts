import { explicit } from "../relation/relation.ts";

/**
 * Temperature effectiveness (0 to 1) of two units in series through which the water runs with the air, each stream mixed
 * on its way from one to the other; R, on the air, is the same for both.
 *
 * @example inSeriesParallel.compute({ P_A: 0.5, P_B: 0.4, R: 0.5 }) // 0.6
 */
export const inSeriesParallel = explicit({
  id: "exchanger/in-series-parallel",
  title: "Two units in series, water with the air",
  inputs: {
    P_A: { symbol: "P_A", kind: "fraction" },
    P_B: { symbol: "P_B", kind: "fraction" },
    R: { symbol: "R", kind: "ratio" },
  },
  result: { symbol: "P", kind: "fraction" },
  expression: "P_A + P_B - (1 + R) * P_A * P_B",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, exchangers in series", standing: "from memory" }],
  compute: ({ P_A, P_B, R }) => P_A + P_B - (1 + R) * P_A * P_B,
});
