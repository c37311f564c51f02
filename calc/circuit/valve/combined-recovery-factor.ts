import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Pressure recovery factor of a valve together with the reducer before it: K the coefficients on the inlet side, bore d_v in m, flow
 * coefficient in m³/s.
 *
 * @example combinedRecoveryFactor.compute({ F_L: 0.83, K: 0.863, K_v: 24 / 3600, d_v: 0.057 }) // 0.82171
 */
export const combinedRecoveryFactor = explicit({
  id: "circuit/valve/combined-recovery-factor",
  title: "Recovery factor of a valve with its reducer",
  inputs: {
    F_L: { symbol: "F_L", kind: "ratio" },
    K: { symbol: "K_isum", kind: "ratio" },
    K_v: { symbol: "K_v", kind: "flowCoefficient" },
    d_v: { symbol: "d_v", kind: "length" },
  },
  result: { symbol: "F_LP", kind: "ratio" },
  expression: "F_L / sqrt(1 + F_L^2 * K * (K_v / (c_n * d_v^2))^2)",
  sources: [
    { key: "iec-60534-2-1", where: "combined liquid pressure recovery factor", standing: "from memory" },
  ],
  compute: ({ F_L, K, K_v, d_v }) =>
    F_L / Math.sqrt(1 + F_L ** 2 * K * (K_v / (constants.c_n.value * d_v ** 2)) ** 2),
});
