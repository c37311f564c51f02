import { explicit } from "../relation/relation.ts";

/**
 * Conductance of a cooler in W/K, from its transfer units on the air and the heat-capacity rate of the air in W/K.
 *
 * @example conductance.compute({ NTU: 2, C_a: 1000 }) // 2 000 W/K
 */
export const conductance = explicit({
  id: "exchanger/conductance",
  title: "Conductance of the cooler",
  inputs: {
    NTU: { symbol: "NTU", kind: "ratio" },
    C_a: { symbol: "C_a", kind: "capacityRate" },
  },
  result: { symbol: "UA", kind: "conductance" },
  expression: "NTU * C_a",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, number of transfer units", standing: "from memory" },
  ],
  compute: ({ NTU, C_a }) => NTU * C_a,
});
