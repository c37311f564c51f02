import { explicit } from "../relation/relation.ts";

/**
 * Heat conductance in W/K of a cooler from those of its two sides: their resistances, the inverses, add up.
 *
 * @example overallConductance.compute({ UA_a: 1508.4, UA_w: 3960 }) // 1092.3 W/K
 */
export const overallConductance = explicit({
  id: "exchanger/overall-conductance",
  title: "Heat conductance from both sides",
  inputs: {
    UA_a: { symbol: "UA_a", kind: "conductance" },
    UA_w: { symbol: "UA_w", kind: "conductance" },
  },
  result: { symbol: "UA", kind: "conductance" },
  expression: "1 / (1 / UA_a + 1 / UA_w)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, thermal resistances in series", standing: "from memory" },
  ],
  compute: ({ UA_a, UA_w }) => 1 / (1 / UA_a + 1 / UA_w),
});
