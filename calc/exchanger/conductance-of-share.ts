import { explicit } from "../relation/relation.ts";

/**
 * Heat conductance in W/K of one part of the way of the heat, from its share in the whole resistance.
 *
 * @example conductanceOfShare.compute({ UA: 254.275, s_side: 0.62 }) // 410.12 W/K
 */
export const conductanceOfShare = explicit({
  id: "exchanger/conductance-of-share",
  title: "Heat conductance of one part, from its share",
  inputs: {
    UA: { symbol: "UA", kind: "conductance" },
    s_side: { symbol: "s_side", kind: "fraction" },
  },
  result: { symbol: "UA_side", kind: "conductance" },
  expression: "UA / s_side",

  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, thermal resistances in series", standing: "from memory" },
  ],

  compute: ({ UA, s_side }) => UA / s_side,
});
