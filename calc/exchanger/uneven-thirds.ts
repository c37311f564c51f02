import { explicit } from "../relation/relation.ts";

/**
 * Temperature effectiveness of a cooler whose three thirds get unequal air: the mean of theirs, weighted with the air.
 *
 * @example unevenThirds.compute({ omega_1: 1.2, P_1: 0.7, omega_2: 1, P_2: 0.77, omega_3: 0.8, P_3: 0.85 }) // 0.7633
 */
export const unevenThirds = explicit({
  id: "exchanger/uneven-thirds",
  title: "Effectiveness with three unequal thirds",
  inputs: {
    omega_1: { symbol: "omega_1", kind: "ratio" },
    P_1: { symbol: "P_omega_1", kind: "fraction" },
    omega_2: { symbol: "omega_2", kind: "ratio" },
    P_2: { symbol: "P_omega_2", kind: "fraction" },
    omega_3: { symbol: "omega_3", kind: "ratio" },
    P_3: { symbol: "P_omega_3", kind: "fraction" },
  },
  result: { symbol: "P_u", kind: "fraction" },
  expression: "omega_1 * P_1 / 3 + omega_2 * P_2 / 3 + omega_3 * P_3 / 3",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 12, flow maldistribution between parallel passages",
      standing: "derived here",
    },
  ],
  compute: ({ omega_1, P_1, omega_2, P_2, omega_3, P_3 }) =>
    (omega_1 * P_1 + omega_2 * P_2 + omega_3 * P_3) / 3,
});
