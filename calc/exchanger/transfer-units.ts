import { explicit } from "../relation/relation.ts";

/**
 * Transfer units of a cooler on the air, from its conductance and the heat-capacity rate of the air, both in W/K.
 *
 * @example transferUnits.compute({ UA: 2000, C_a: 1000 }) // 2
 */
export const transferUnits = explicit({
  id: "exchanger/transfer-units",
  title: "Transfer units",
  inputs: {
    UA: { symbol: "UA", kind: "conductance" },
    C_a: { symbol: "C_a", kind: "capacityRate" },
  },
  result: { symbol: "NTU", kind: "ratio" },
  expression: "UA / C_a",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, number of transfer units", standing: "from memory" },
  ],
  compute: ({ UA, C_a }) => UA / C_a,
});
