import { explicit } from "../../relation/relation.ts";

/**
 * Authority of a valve: the difference across it when open over all of what is lost at that flow. Pa.
 *
 * @example authority.compute({ Delta_p_v: 81280, Delta_p_rest: 142700 }) // 0.36289
 */
export const authority = explicit({
  id: "circuit/valve/authority",
  title: "Authority of a valve",
  inputs: {
    Delta_p_v: { symbol: "Delta_p_v", kind: "pressureDifference" },
    Delta_p_rest: { symbol: "Delta_p_rest", kind: "pressureDifference" },
  },
  result: { symbol: "N_v", kind: "fraction" },
  expression: "Delta_p_v / (Delta_p_v + Delta_p_rest)",
  sources: [
    {
      key: "white-fluid-mechanics",
      where: "definition in use for control valves",
      standing: "common practice",
    },
  ],
  compute: ({ Delta_p_v, Delta_p_rest }) => Delta_p_v / (Delta_p_v + Delta_p_rest),
});
