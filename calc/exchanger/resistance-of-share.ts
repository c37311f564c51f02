import { explicit } from "../relation/relation.ts";

/**
 * Thermal resistance in K/W of one part of the way of the heat, from its share in the whole resistance.
 *
 * @example resistanceOfShare.compute({ UA: 254.275, s_side: 0.018 }) // 7.079e-5 K/W
 */
export const resistanceOfShare = explicit({
  id: "exchanger/resistance-of-share",
  title: "Thermal resistance of one part, from its share",
  inputs: {
    UA: { symbol: "UA", kind: "conductance" },
    s_side: { symbol: "s_side", kind: "fraction" },
  },
  result: { symbol: "R_side", kind: "thermalResistance" },
  expression: "s_side / UA",

  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, thermal resistances in series", standing: "from memory" },
  ],

  compute: ({ UA, s_side }) => s_side / UA,
});
