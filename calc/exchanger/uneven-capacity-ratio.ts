import { explicit } from "../relation/relation.ts";

/**
 * Heat-capacity rate of the air of a part of the face over that of its own, even share of the water.
 *
 * @example unevenCapacityRatio.compute({ R: 0.094, omega: 1.2 }) // 0.1128
 */
export const unevenCapacityRatio = explicit({
  id: "exchanger/uneven-capacity-ratio",
  title: "Heat-capacity rates of a part of the face",
  inputs: {
    R: { symbol: "R", kind: "ratio" },
    omega: { symbol: "omega", kind: "ratio" },
  },
  result: { symbol: "R_i", kind: "ratio" },
  expression: "R * omega",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 12, flow maldistribution between parallel passages",
      standing: "derived here",
    },
  ],
  compute: ({ R, omega }) => R * omega,
});
