import { explicit } from "../relation/relation.ts";

/**
 * What the water took up over what the air gave off, less one: 0 where the readings agree. Both in W.
 *
 * @example heatBalance.compute({ Q_w: 98000, Q_a: 100000 }) // -0.02
 */
export const heatBalance = explicit({
  id: "exchanger/heat-balance",
  title: "Closure of the heat balance",
  inputs: {
    Q_w: { symbol: "Q_w", kind: "heatFlow" },
    Q_a: { symbol: "Q_a", kind: "heatFlow" },
  },
  result: { symbol: "delta_Q", kind: "fraction" },
  expression: "Q_w / Q_a - 1",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ Q_w, Q_a }) => Q_w / Q_a - 1,
});
