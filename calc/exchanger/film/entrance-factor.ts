import { explicit } from "../../relation/relation.ts";

/**
 * By how much the mean Nusselt number of turbulent flow in a tube of length L exceeds that of an endless one; both in m.
 *
 * @example entranceFactor.compute({ D_h: 0.01, L: 1 }) // 1.0464
 */
export const entranceFactor = explicit({
  id: "exchanger/film/entrance-factor",
  title: "Effect of the entrance on turbulent heat transfer",
  inputs: {
    D_h: { symbol: "D_h", kind: "length" },
    L: { symbol: "L", kind: "length" },
  },
  result: { symbol: "X_ent", kind: "ratio" },
  expression: "1 + (D_h / L)^(2 / 3)",

  sources: [
    { key: "gnielinski-1976", where: "factor for the length, after Hausen", standing: "from memory" },
  ],

  compute: ({ D_h, L }) => 1 + (D_h / L) ** (2 / 3),
});
