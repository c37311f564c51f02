import { explicit } from "../relation/relation.ts";

/**
 * Effectiveness as most books have it, on the stream with the smaller heat-capacity rate, from that on the air.
 *
 * @example smallerEffectiveness.compute({ P: 0.4, R: 2 }) // 0.8
 */
export const smallerEffectiveness = explicit({
  id: "exchanger/smaller-effectiveness",
  title: "Effectiveness on the smaller stream",
  inputs: {
    P: { symbol: "P", kind: "fraction" },
    R: { symbol: "R", kind: "ratio" },
  },
  result: { symbol: "epsilon", kind: "fraction" },
  expression: "P * max(1, R)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, relation between effectiveness and temperature effectiveness",
      standing: "from memory",
    },
  ],
  compute: ({ P, R }) => P * Math.max(1, R),
});
