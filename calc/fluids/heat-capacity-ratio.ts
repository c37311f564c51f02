import { explicit } from "../relation/relation.ts";

/**
 * Ratio of the heat capacities of an ideal gas at constant pressure and at constant volume.
 *
 * @example heatCapacityRatio.compute({ c_p: 1004.8, R_m: 287.04 }) // 1.3999
 */
export const heatCapacityRatio = explicit({
  id: "fluids/heat-capacity-ratio",
  title: "Heat-capacity ratio",
  inputs: {
    c_p: { symbol: "c_p", kind: "specificHeat" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
  },
  result: { symbol: "kappa", kind: "ratio" },
  expression: "c_p / (c_p - R_m)",
  sources: [{ key: "moran-shapiro", where: "chapter 3, ideal gas", standing: "from memory" }],
  compute: ({ c_p, R_m }) => c_p / (c_p - R_m),
});
