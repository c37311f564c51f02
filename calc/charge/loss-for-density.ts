import { explicit } from "../relation/relation.ts";

/**
 * Loss of a cooler, Pa, that leaves air of the density rho, kg/m³, behind it: pressure before it in Pa absolute, gas constant
 * in J/(kg K) and temperature in K after it.
 *
 * @example lossForDensity.compute({ p_in: 296313, rho: 2.2891, R_m: 287.043, T_out: 331.77 }) // 78 317 Pa
 */
export const lossForDensity = explicit({
  id: "charge/loss-for-density",
  title: "Loss that leaves a density",
  inputs: {
    p_in: { symbol: "p_in", kind: "pressure" },
    rho: { symbol: "rho", kind: "density" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "Delta_p_be", kind: "pressureDifference" },
  expression: "p_in - rho * R_m * T_out",
  sources: [{ key: "moran-shapiro", where: "chapter 3, ideal gas", standing: "derived here" }],
  compute: ({ p_in, rho, R_m, T_out }) => p_in - rho * R_m * T_out,
});
