import { explicit } from "../relation/relation.ts";

/**
 * Flow through the second of two halves over its even share: what the first leaves.
 *
 * @example unevenLastHalf.compute({ omega_1: 1.2 }) // 0.8
 */
export const unevenLastHalf = explicit({
  id: "exchanger/uneven-last-half",
  title: "Flow through the other half",
  inputs: {
    omega_1: { symbol: "omega_1", kind: "ratio" },
  },
  result: { symbol: "omega_2", kind: "ratio" },
  expression: "2 - omega_1",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 12, flow maldistribution between parallel passages",
      standing: "derived here",
    },
  ],
  compute: ({ omega_1 }) => 2 - omega_1,
});
