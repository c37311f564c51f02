import { explicit } from "../relation/relation.ts";

/**
 * Total pressure in Pa at the end of a pipe from that at its beginning, the static pressures in Pa at both ends, and total over
 * static pressure at both.
 *
 * @example totalPressureAfterFriction.compute({ p_tot_in: 106.44e3, p_stat_in: 100e3, p_stat_end: 80e3, Pi_in: 1.0644, Pi_end: 1.102 }) // 88 160 Pa
 */
export const totalPressureAfterFriction = explicit({
  id: "flow/total-pressure-after-friction",
  title: "Total pressure after friction",
  inputs: {
    p_tot_in: { symbol: "p_tot_in", kind: "pressure" },
    p_stat_in: { symbol: "p_stat_in", kind: "pressure" },
    p_stat_end: { symbol: "p_stat_end", kind: "pressure" },
    Pi_in: { symbol: "Pi_in", kind: "ratio" },
    Pi_end: { symbol: "Pi_end", kind: "ratio" },
  },
  result: { symbol: "p_tot_end", kind: "pressure" },
  expression: "p_tot_in * (p_stat_end / p_stat_in) * (Pi_end / Pi_in)",
  sources: [
    { key: "shapiro-1953", where: "chapter 6, adiabatic flow with friction", standing: "from memory" },
  ],
  compute: ({ p_tot_in, p_stat_in, p_stat_end, Pi_in, Pi_end }) =>
    p_tot_in * (p_stat_end / p_stat_in) * (Pi_end / Pi_in),
});
