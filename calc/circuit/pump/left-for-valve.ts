import { explicit } from "../../relation/relation.ts";

/**
 * Pressure difference in Pa that is left for the valve: what the pump or the tank gives, less the lift and all other losses.
 *
 * @example leftForValve.compute({ Delta_p_P: 285.4e3, Delta_p_z: 19.6e3, Delta_p_rest: 23.3e3 }) // 2.4250e5 Pa
 */
export const leftForValve = explicit({
  id: "circuit/pump/left-for-valve",
  title: "What is left for the valve",
  inputs: {
    Delta_p_P: { symbol: "Delta_p_P", kind: "pressureDifference" },
    Delta_p_z: { symbol: "Delta_p_z", kind: "pressureDifference" },
    Delta_p_rest: { symbol: "Delta_p_rest", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_v", kind: "pressureDifference" },
  expression: "Delta_p_P - Delta_p_z - Delta_p_rest",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, energy along a pipe", standing: "from memory" },
  ],
  compute: ({ Delta_p_P, Delta_p_z, Delta_p_rest }) => Delta_p_P - Delta_p_z - Delta_p_rest,
});
