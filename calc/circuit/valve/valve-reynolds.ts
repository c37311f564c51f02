import { constants } from "../../constants.ts";
import { explicit } from "../../relation/relation.ts";

/**
 * Reynolds number of the flow in a valve; from 10 000 on the flow is turbulent. m³/s, kg/m³, Pa s; the modifier F_d is the part of one
 * round jet that each of several passages is; flow coefficient in m³/s, bore d_v in m.
 *
 * @example valveReynolds.compute({ F_d: 0.46, V_w: 0.1, rho: 965.4, mu: 3.1472e-4, F_L: 0.9, K_v: 165 / 3600, d_v: 0.15 }) // 2.9670e6
 */
export const valveReynolds = explicit({
  id: "circuit/valve/valve-reynolds",
  title: "Reynolds number of a valve",
  inputs: {
    F_d: { symbol: "F_d", kind: "ratio" },
    V_w: { symbol: "V_w", kind: "liquidFlow" },
    rho: { symbol: "rho", kind: "density" },
    mu: { symbol: "mu", kind: "viscosity" },
    F_L: { symbol: "F_L", kind: "ratio" },
    K_v: { symbol: "K_v", kind: "flowCoefficient" },
    d_v: { symbol: "d_v", kind: "length" },
  },
  result: { symbol: "Re_v", kind: "ratio" },
  expression: "F_d * V_w * rho / mu * sqrt(c_Re / (F_L * K_v)) * (1 + (F_L * K_v / (c_n * d_v^2))^2)^(1/4)",
  sources: [{ key: "iec-60534-2-1", where: "valve Reynolds number", standing: "from memory" }],
  compute: ({ F_d, V_w, rho, mu, F_L, K_v, d_v }) =>
    ((F_d * V_w * rho) / mu) *
    Math.sqrt(constants.c_Re.value / (F_L * K_v)) *
    (1 + ((F_L * K_v) / (constants.c_n.value * d_v ** 2)) ** 2) ** 0.25,
});
