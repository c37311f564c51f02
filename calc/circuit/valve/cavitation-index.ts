import { explicit } from "../../relation/relation.ts";

/**
 * Cavitation index of a valve: how far the liquid before it is from boiling, over the difference across it. Pa absolute. Below about 2
 * many valves begin to be noisy; the maker has the number of each.
 *
 * @example cavitationIndex.compute({ p_in: 348.8e3, p_v: 3170, Delta_p: 242.5e3 }) // 1.4253
 */
export const cavitationIndex = explicit({
  id: "circuit/valve/cavitation-index",
  title: "Cavitation index",
  inputs: {
    p_in: { symbol: "p_in", kind: "pressure" },
    p_v: { symbol: "p_v", kind: "pressure" },
    Delta_p: { symbol: "Delta_p_v", kind: "pressureDifference" },
  },
  result: { symbol: "sigma_c", kind: "ratio" },
  expression: "(p_in - p_v) / Delta_p",
  sources: [{ key: "isa-rp75-23", where: "definition of the index", standing: "from memory" }],
  compute: ({ p_in, p_v, Delta_p }) => (p_in - p_v) / Delta_p,
});
