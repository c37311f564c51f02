import { explicit } from "../relation/relation.ts";

/**
 * Heat capacity at constant pressure, J/(kg K), that goes with the heat-capacity ratio kappa (above 1).
 *
 * @example constantHeatCapacity.compute({ R_m: 287.043, kappa: 1.4 }) // 1004.65 J/(kg K)
 */
export const constantHeatCapacity = explicit({
  id: "compression/constant-heat-capacity",
  title: "Heat capacity from the heat-capacity ratio",
  inputs: {
    R_m: { symbol: "R_m", kind: "specificHeat" },
    kappa: { symbol: "kappa", kind: "ratio" },
  },
  result: { symbol: "c_p", kind: "specificHeat" },
  expression: "R_m * kappa / (kappa - 1)",
  sources: [{ key: "moran-shapiro", where: "chapter 3, ideal gas", standing: "from memory" }],
  compute: ({ R_m, kappa }) => (R_m * kappa) / (kappa - 1),
});
