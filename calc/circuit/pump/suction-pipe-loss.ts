import { explicit } from "../../relation/relation.ts";

/**
 * Pressure in Pa that a suction pipe takes without its strainer: friction on its wall, and its fittings.
 *
 * @example suctionPipeLoss.compute({ Delta_p_wall: 3200, Delta_p_other: 2900 }) // 6100 Pa
 */
export const suctionPipeLoss = explicit({
  id: "circuit/pump/suction-pipe-loss",
  title: "Loss of a suction pipe",
  inputs: {
    Delta_p_wall: { symbol: "Delta_p_wall", kind: "pressureDifference" },
    Delta_p_other: { symbol: "Delta_p_other", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_sp", kind: "pressureDifference" },
  expression: "Delta_p_wall + Delta_p_other",
  sources: [{ key: "white-fluid-mechanics", where: "chapter 6, losses in series", standing: "from memory" }],
  compute: ({ Delta_p_wall, Delta_p_other }) => Delta_p_wall + Delta_p_other,
});
