import { constants } from "../../constants.ts";
import { refuse } from "../../quantity/accept.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Flow coefficient in m³/s of a valve alone, from that of the valve with its reducers: valve of bore d_v in m, K the sum of their
 * loss coefficients. The formula for F_P, solved for the valve. There is none where the reducers alone pass less.
 *
 * @example coefficientAlone.compute({ K_vf: 24 / 3600, K: 0.5, d_v: 0.057 }) // 0.0067242 m³/s
 */
export const coefficientAlone = explicit({
  id: "circuit/valve/coefficient-alone",
  title: "Flow coefficient of the valve alone",
  inputs: {
    K_vf: { symbol: "K_vf", kind: "flowCoefficient" },
    K: { symbol: "K_sum", kind: "ratio" },
    d_v: { symbol: "d_v", kind: "length" },
  },
  result: { symbol: "K_v", kind: "flowCoefficient" },
  expression: "K_vf / sqrt(1 - K * (K_vf / (c_n * d_v^2))^2)",
  sources: [
    {
      key: "iec-60534-2-1",
      where: "piping geometry factor, solved for the coefficient",
      standing: "derived here",
    },
  ],
  compute: ({ K_vf, K, d_v }) => {
    const left = 1 - K * (K_vf / (constants.c_n.value * d_v ** 2)) ** 2;
    refuse(
      !(left > 0),
      "d_v",
      "The reducers alone pass less than this flow, whatever the valve. A larger valve is needed.",
    );
    return K_vf / Math.sqrt(left);
  },
});
