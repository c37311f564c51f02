import { explicit } from "../relation/relation.ts";

/**
 * Temperature effectiveness of a cooler whose two halves get unequal air: the mean of theirs, weighted with the air.
 *
 * @example unevenHalves.compute({ omega_1: 1.2, P_1: 0.7, omega_2: 0.8, P_2: 0.85 }) // 0.76
 */
export const unevenHalves = explicit({
  id: "exchanger/uneven-halves",
  title: "Effectiveness with two unequal halves",
  inputs: {
    omega_1: { symbol: "omega_1", kind: "ratio" },
    P_1: { symbol: "P_omega_1", kind: "fraction" },
    omega_2: { symbol: "omega_2", kind: "ratio" },
    P_2: { symbol: "P_omega_2", kind: "fraction" },
  },
  result: { symbol: "P_u", kind: "fraction" },
  expression: "(omega_1 * P_1 + omega_2 * P_2) / 2",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 12, flow maldistribution between parallel passages",
      standing: "derived here",
    },
  ],
  compute: ({ omega_1, P_1, omega_2, P_2 }) => (omega_1 * P_1 + omega_2 * P_2) / 2,
});
