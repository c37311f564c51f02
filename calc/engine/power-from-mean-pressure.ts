import { explicit } from "../relation/relation.ts";

/**
 * Brake power in W from the brake mean effective pressure in Pa, displacement in m³, speed in rev/s and revolutions per cycle.
 *
 * @example powerFromMeanPressure.compute({ p_me: 2.169e6, V_d: 2e-3, n: 6500 / 60, n_R: 2 }) // 234 975 W
 */
export const powerFromMeanPressure = explicit({
  id: "engine/power-from-mean-pressure",
  title: "Power from mean effective pressure",
  inputs: {
    p_me: { symbol: "p_me", kind: "pressureDifference" },
    V_d: { symbol: "V_d", kind: "volume" },
    n: { symbol: "n", kind: "rotationalSpeed" },
    n_R: { symbol: "n_R", kind: "ratio" },
  },
  result: { symbol: "W_e", kind: "power" },
  expression: "p_me * V_d * (n / n_R)",
  sources: [{ key: "heywood", where: "chapter 2, mean effective pressure", standing: "from memory" }],
  compute: ({ p_me, V_d, n, n_R }) => p_me * V_d * (n / n_R),
});
