import { explicit } from "../relation/relation.ts";

/**
 * Total pressure in Pa that is lost between two places.
 *
 * @example totalPressureLoss.compute({ p_tot_in: 260e3, p_tot_out: 255e3 }) // 5000 Pa
 */
export const totalPressureLoss = explicit({
  id: "flow/total-pressure-loss",
  title: "Total pressure lost",
  inputs: {
    p_tot_in: { symbol: "p_tot_in", kind: "pressure" },
    p_tot_out: { symbol: "p_tot_out", kind: "pressure" },
  },
  result: { symbol: "Delta_p_tot", kind: "pressureDifference" },
  expression: "p_tot_in - p_tot_out",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, pressure loss in a pipe", standing: "from memory" },
  ],
  compute: ({ p_tot_in, p_tot_out }) => p_tot_in - p_tot_out,
});
