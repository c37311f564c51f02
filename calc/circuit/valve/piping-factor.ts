import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Piping geometry factor: what reducers leave of the flow coefficient of a valve of bore d_v in m. Flow coefficient in m³/s.
 *
 * @example pipingFactor.compute({ K: 0.36, K_v: 24 / 3600, d_v: 0.057 }) // 0.99392
 */
export const pipingFactor = explicit({
  id: "circuit/valve/piping-factor",
  title: "Piping geometry factor",
  inputs: {
    K: { symbol: "K_sum", kind: "ratio" },
    K_v: { symbol: "K_v", kind: "flowCoefficient" },
    d_v: { symbol: "d_v", kind: "length" },
  },
  result: { symbol: "F_P", kind: "ratio" },
  expression: "1 / sqrt(1 + K * (K_v / (c_n * d_v^2))^2)",
  sources: [{ key: "iec-60534-2-1", where: "piping geometry factor", standing: "from memory" }],
  compute: ({ K, K_v, d_v }) => 1 / Math.sqrt(1 + K * (K_v / (constants.c_n.value * d_v ** 2)) ** 2),
});
