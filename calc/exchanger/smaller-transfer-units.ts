import { explicit } from "../relation/relation.ts";

/**
 * Transfer units as most books have them, on the stream with the smaller heat-capacity rate, from those on the air.
 *
 * @example smallerTransferUnits.compute({ NTU: 1.5, R: 2 }) // 3
 */
export const smallerTransferUnits = explicit({
  id: "exchanger/smaller-transfer-units",
  title: "Transfer units on the smaller stream",
  inputs: {
    NTU: { symbol: "NTU", kind: "ratio" },
    R: { symbol: "R", kind: "ratio" },
  },
  result: { symbol: "NTU_min", kind: "ratio" },
  expression: "NTU * max(1, R)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, number of transfer units", standing: "from memory" },
  ],
  compute: ({ NTU, R }) => NTU * Math.max(1, R),
});
