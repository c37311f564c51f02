import { explicit } from "../../relation/relation.ts";

/**
 * What a circuit loses but in the valve, Pa: walls of the pipe, its fittings, and the core.
 *
 * @example restLoss.compute({ Delta_p_wall: 7.2e3, Delta_p_other: 6e3, Delta_p_core: 10.125e3 }) // 23325 Pa
 */
export const restLoss = explicit({
  id: "circuit/pump/rest-loss",
  title: "Losses of a circuit without the valve",
  inputs: {
    Delta_p_wall: { symbol: "Delta_p_wall", kind: "pressureDifference" },
    Delta_p_other: { symbol: "Delta_p_other", kind: "pressureDifference" },
    Delta_p_core: { symbol: "Delta_p_core", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_rest", kind: "pressureDifference" },
  expression: "Delta_p_wall + Delta_p_other + Delta_p_core",
  sources: [{ key: "white-fluid-mechanics", where: "chapter 6, losses in series", standing: "from memory" }],
  compute: ({ Delta_p_wall, Delta_p_other, Delta_p_core }) => Delta_p_wall + Delta_p_other + Delta_p_core,
});
