import { explicit } from "../../relation/relation.ts";

/**
 * Differential pressure ratio of a valve: the difference across it over how far the liquid before it is from boiling. Pa absolute.
 *
 * @example pressureRatioFactor.compute({ p_in: 348.8e3, p_v: 3170, Delta_p: 242.5e3 }) // 0.70162
 */
export const pressureRatioFactor = explicit({
  id: "circuit/valve/pressure-ratio-factor",
  title: "Differential pressure ratio of a valve",
  inputs: {
    p_in: { symbol: "p_in", kind: "pressure" },
    p_v: { symbol: "p_v", kind: "pressure" },
    Delta_p: { symbol: "Delta_p_v", kind: "pressureDifference" },
  },
  result: { symbol: "x_F", kind: "ratio" },
  expression: "Delta_p / (p_in - p_v)",
  sources: [{ key: "iec-60534-8-2", where: "differential pressure ratio", standing: "from memory" }],
  compute: ({ p_in, p_v, Delta_p }) => Delta_p / (p_in - p_v),
});
