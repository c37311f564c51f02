import { explicit } from "../relation/relation.ts";

/**
 * Share of one part of the way of the heat in the whole resistance, from its own resistance in K/W and the whole conductance in W/K.
 *
 * @example shareOfResistance.compute({ UA: 559.26, R_side: 2.0202e-4 }) // 0.1130
 */
export const shareOfResistance = explicit({
  id: "exchanger/share-of-resistance",
  title: "Share of one part in the resistance",
  inputs: {
    UA: { symbol: "UA", kind: "conductance" },
    R_side: { symbol: "R_side", kind: "thermalResistance" },
  },
  result: { symbol: "s_side", kind: "fraction" },
  expression: "UA * R_side",

  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, thermal resistances in series", standing: "from memory" },
  ],

  compute: ({ UA, R_side }) => UA * R_side,
});
