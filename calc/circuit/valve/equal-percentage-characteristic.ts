import { explicit } from "../../relation/relation.ts";

/**
 * Part of its full flow coefficient that an equal-percentage valve has at the position x_v, 0 to 1: each step of the position changes
 * the flow by the same part. R_0 is the rangeability; at 0 one part in R_0 is left, and what closes the valve is its seat.
 *
 * @example equalPercentageCharacteristic.compute({ x_v: 0.6253, R_0: 50 }) // 0.23089
 */
export const equalPercentageCharacteristic = explicit({
  id: "circuit/valve/equal-percentage-characteristic",
  title: "Equal-percentage characteristic",
  inputs: {
    x_v: { symbol: "x_v", kind: "fraction" },
    R_0: { symbol: "R_0", kind: "ratio" },
  },
  result: { symbol: "phi_v", kind: "fraction" },
  expression: "R_0^(x_v - 1)",
  sources: [
    { key: "iec-60534-2-4", where: "ideal equal-percentage characteristic", standing: "from memory" },
  ],
  compute: ({ x_v, R_0 }) => R_0 ** (x_v - 1),
});
