import { explicit } from "../relation/relation.ts";

/**
 * Brake mean effective pressure in Pa: work a cycle over displacement. Brake power in W, revolutions per cycle (2 for a
 * four-stroke, 1 for a two-stroke), displacement in m³, speed in rev/s.
 *
 * @example meanEffectivePressure.compute({ W_e: 235e3, n_R: 2, V_d: 2e-3, n: 6500 / 60 }) // 2 169 231 Pa
 */
export const meanEffectivePressure = explicit({
  id: "engine/mean-effective-pressure",
  title: "Mean effective pressure",
  inputs: {
    W_e: { symbol: "W_e", kind: "power" },
    n_R: { symbol: "n_R", kind: "ratio" },
    V_d: { symbol: "V_d", kind: "volume" },
    n: { symbol: "n", kind: "rotationalSpeed" },
  },
  result: { symbol: "p_me", kind: "pressureDifference" },
  expression: "W_e * n_R / (V_d * n)",
  sources: [{ key: "heywood", where: "chapter 2, mean effective pressure", standing: "from memory" }],
  compute: ({ W_e, n_R, V_d, n }) => (W_e * n_R) / (V_d * n),
});
