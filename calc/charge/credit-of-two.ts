import { explicit } from "../relation/relation.ts";

/**
 * Part of the density gained that a device is credited with among two: the mean of what it adds at each place in the order of
 * fitting, as multiples of the density at the inlet.
 *
 * @example creditOfTwo.compute({ Delta_D_1: 0.65358, Delta_D_2: 1.03856 }) // 0.84607
 */
export const creditOfTwo = explicit({
  id: "charge/credit-of-two",
  title: "Credit of one device among two",
  inputs: {
    Delta_D_1: { symbol: "Delta_D_1", kind: "ratio" },
    Delta_D_2: { symbol: "Delta_D_2", kind: "ratio" },
  },
  result: { symbol: "Delta_D", kind: "ratio" },
  expression: "(Delta_D_1 + Delta_D_2) / 2",
  sources: [{ key: "shapley-1953", where: "average over all orders", standing: "from memory" }],
  compute: ({ Delta_D_1, Delta_D_2 }) => (Delta_D_1 + Delta_D_2) / 2,
});
