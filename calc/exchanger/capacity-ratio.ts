import { explicit } from "../relation/relation.ts";

/**
 * Heat-capacity rate of the air over that of the water, both in W/K: above 1 where the water is throttled.
 *
 * @example capacityRatio.compute({ C_a: 1000, C_w: 4000 }) // 0.25
 */
export const capacityRatio = explicit({
  id: "exchanger/capacity-ratio",
  title: "Ratio of heat-capacity rates",
  inputs: {
    C_a: { symbol: "C_a", kind: "capacityRate" },
    C_w: { symbol: "C_w", kind: "capacityRate" },
  },
  result: { symbol: "R", kind: "ratio" },
  expression: "C_a / C_w",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, P-NTU method", standing: "from memory" }],
  compute: ({ C_a, C_w }) => C_a / C_w,
});
