import { explicit } from "../relation/relation.ts";

/**
 * Heat in W that the water has to carry away.
 *
 * @example duty.compute({ Q_s: 150390, Q_l: 32270 }) // 182 660 W
 */
export const duty = explicit({
  id: "exchanger/duty",
  title: "Duty of the cooler",
  inputs: {
    Q_s: { symbol: "Q_s", kind: "heatFlow" },
    Q_l: { symbol: "Q_l", kind: "heatFlow" },
  },
  result: { symbol: "Q", kind: "heatFlow" },
  expression: "Q_s + Q_l",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ Q_s, Q_l }) => Q_s + Q_l,
});
