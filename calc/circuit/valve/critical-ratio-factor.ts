import { explicit } from "../../relation/relation.ts";

/**
 * Factor for the pressure that a liquid keeps where it boils in the narrowest jet of a valve: from its vapour pressure and its
 * critical pressure, both Pa absolute.
 *
 * @example criticalRatioFactor.compute({ p_v: 70100, p_crit: 22.12e6 }) // 0.94424
 */
export const criticalRatioFactor = explicit({
  id: "circuit/valve/critical-ratio-factor",
  title: "Factor of the liquid for choking",
  inputs: {
    p_v: { symbol: "p_v", kind: "pressure" },
    p_crit: { symbol: "p_crit", kind: "pressure" },
  },
  result: { symbol: "F_F", kind: "ratio" },
  expression: "0.96 - 0.28 * sqrt(p_v / p_crit)",
  sources: [
    { key: "iec-60534-2-1", where: "liquid critical pressure ratio factor", standing: "from memory" },
  ],
  compute: ({ p_v, p_crit }) => 0.96 - 0.28 * Math.sqrt(p_v / p_crit),
});
