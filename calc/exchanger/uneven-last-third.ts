import { explicit } from "../relation/relation.ts";

/**
 * Flow through the last of three thirds over its even share: what the others leave.
 *
 * @example unevenLastThird.compute({ omega_1: 1.2, omega_2: 1.1 }) // 0.7
 */
export const unevenLastThird = explicit({
  id: "exchanger/uneven-last-third",
  title: "Flow through the last third",
  inputs: {
    omega_1: { symbol: "omega_1", kind: "ratio" },
    omega_2: { symbol: "omega_2", kind: "ratio" },
  },
  result: { symbol: "omega_3", kind: "ratio" },
  expression: "3 - omega_1 - omega_2",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 12, flow maldistribution between parallel passages",
      standing: "derived here",
    },
  ],
  compute: ({ omega_1, omega_2 }) => 3 - omega_1 - omega_2,
});
