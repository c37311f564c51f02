import { explicit } from "../relation/relation.ts";

/**
 * Share of one part of the way of the heat in the whole resistance, from the conductances of both in W/K.
 *
 * @example shareOfConductance.compute({ UA: 559.26, UA_side: 1220.33 }) // 0.4583
 */
export const shareOfConductance = explicit({
  id: "exchanger/share-of-conductance",
  title: "Share of one part in the resistance, from its conductance",
  inputs: {
    UA: { symbol: "UA", kind: "conductance" },
    UA_side: { symbol: "UA_side", kind: "conductance" },
  },
  result: { symbol: "s_side", kind: "fraction" },
  expression: "UA / UA_side",

  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, thermal resistances in series", standing: "from memory" },
  ],

  compute: ({ UA, UA_side }) => UA / UA_side,
});
