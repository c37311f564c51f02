import { explicit } from "../relation/relation.ts";

/**
 * Duty in W of N_c coolers side by side, each of which has Q_each.
 *
 * @example dutyOfAll.compute({ Q_each: 44800, N_c: 2 }) // 89600 W
 */
export const dutyOfAll = explicit({
  id: "exchanger/duty-of-all",
  title: "Duty of several coolers together",
  inputs: {
    Q_each: { symbol: "Q_each", kind: "heatFlow" },
    N_c: { symbol: "N_c", kind: "ratio" },
  },
  result: { symbol: "Q", kind: "heatFlow" },
  expression: "N_c * Q_each",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ Q_each, N_c }) => N_c * Q_each,
});
