import { explicit } from "../relation/relation.ts";

/**
 * Total pressure in Pa behind an outlet that loses the part K of what the total pressure stands above the static at the end of
 * the bore: all of it into a plenum, where K is 1.
 *
 * @example outletLoss.compute({ p_tot_end: 255e3, K: 1, p_stat_end: 253.4e3 }) // 253 400 Pa
 */
export const outletLoss = explicit({
  id: "flow/outlet-loss",
  title: "Total pressure after an outlet",
  inputs: {
    p_tot_end: { symbol: "p_tot_end", kind: "pressure" },
    K: { symbol: "K", kind: "ratio" },
    p_stat_end: { symbol: "p_stat_end", kind: "pressure" },
  },
  result: { symbol: "p_tot_out", kind: "pressure" },
  expression: "p_tot_end - K * (p_tot_end - p_stat_end)",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, minor losses in pipes", standing: "from memory" },
    {
      key: "white-fluid-mechanics",
      where: "the coefficient on total less static pressure, exact into a plenum",
      standing: "derived here",
    },
  ],
  compute: ({ p_tot_end, K, p_stat_end }) => p_tot_end - K * (p_tot_end - p_stat_end),
});
