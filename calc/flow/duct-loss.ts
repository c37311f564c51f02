import { explicit } from "../relation/relation.ts";

/**
 * Total pressure in Pa that a duct loses while the density of the air hardly changes: the losses of its parts, added.
 *
 * @example ductLoss.compute({ Delta_p_inlet: 700, Delta_p_wall: 1059, Delta_p_bends: 1007, Delta_p_other: 0, Delta_p_outlet: 1490 }) // 4256 Pa
 */
export const ductLoss = explicit({
  id: "flow/duct-loss",
  title: "Loss of a duct with one density",
  inputs: {
    Delta_p_inlet: { symbol: "Delta_p_inlet", kind: "pressureDifference" },
    Delta_p_wall: { symbol: "Delta_p_wall", kind: "pressureDifference" },
    Delta_p_bends: { symbol: "Delta_p_bends", kind: "pressureDifference" },
    Delta_p_other: { symbol: "Delta_p_other", kind: "pressureDifference" },
    Delta_p_outlet: { symbol: "Delta_p_outlet", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_inc", kind: "pressureDifference" },
  expression: "Delta_p_inlet + Delta_p_wall + Delta_p_bends + Delta_p_other + Delta_p_outlet",
  sources: [{ key: "white-fluid-mechanics", where: "chapter 6, losses in series", standing: "from memory" }],
  compute: ({ Delta_p_inlet, Delta_p_wall, Delta_p_bends, Delta_p_other, Delta_p_outlet }) =>
    Delta_p_inlet + Delta_p_wall + Delta_p_bends + Delta_p_other + Delta_p_outlet,
});
