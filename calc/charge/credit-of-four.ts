import { explicit } from "../relation/relation.ts";

/**
 * Part of the density gained that a device is credited with among four: the mean of what it adds at each place in the order of
 * fitting, as multiples of the density at the inlet.
 *
 * @example creditOfFour.compute({ Delta_D_1: 0.9, Delta_D_2: 1.2, Delta_D_3: 1.5, Delta_D_4: 1.6 }) // 1.3
 */
export const creditOfFour = explicit({
  id: "charge/credit-of-four",
  title: "Credit of one device among four",
  inputs: {
    Delta_D_1: { symbol: "Delta_D_1", kind: "ratio" },
    Delta_D_2: { symbol: "Delta_D_2", kind: "ratio" },
    Delta_D_3: { symbol: "Delta_D_3", kind: "ratio" },
    Delta_D_4: { symbol: "Delta_D_4", kind: "ratio" },
  },
  result: { symbol: "Delta_D", kind: "ratio" },
  expression: "(Delta_D_1 + Delta_D_2 + Delta_D_3 + Delta_D_4) / 4",
  sources: [{ key: "shapley-1953", where: "average over all orders", standing: "from memory" }],
  compute: ({ Delta_D_1, Delta_D_2, Delta_D_3, Delta_D_4 }) =>
    (Delta_D_1 + Delta_D_2 + Delta_D_3 + Delta_D_4) / 4,
});
