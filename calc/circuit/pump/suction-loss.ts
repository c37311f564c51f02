import { explicit } from "../../relation/relation.ts";

/**
 * Pressure in Pa that is lost up to a pump: the suction pipe, and the strainer in it.
 *
 * @example suctionLoss.compute({ Delta_p_sp: 6100, Delta_p_str: 5000 }) // 11100 Pa
 */
export const suctionLoss = explicit({
  id: "circuit/pump/suction-loss",
  title: "Loss before a pump",
  inputs: {
    Delta_p_sp: { symbol: "Delta_p_sp", kind: "pressureDifference" },
    Delta_p_str: { symbol: "Delta_p_str", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_suc", kind: "pressureDifference" },
  expression: "Delta_p_sp + Delta_p_str",
  sources: [{ key: "white-fluid-mechanics", where: "chapter 6, losses in series", standing: "from memory" }],
  compute: ({ Delta_p_sp, Delta_p_str }) => Delta_p_sp + Delta_p_str,
});
