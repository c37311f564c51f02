import { explicit } from "../relation/relation.ts";

/**
 * Heat that a volume of a liquid carries for each kelvin, over that of fresh water at the same temperature. Densities in kg/m³, heat
 * capacities in J/(kg K).
 *
 * @example volumeHeatRatio.compute({ rho: 1064.9, c_p: 3312, rho_w: 998.2, c_p_w: 4184 }) // 0.84448
 */
export const volumeHeatRatio = explicit({
  id: "fluids/volume-heat-ratio",
  title: "Heat in a volume, against fresh water",
  inputs: {
    rho: { symbol: "rho", kind: "density" },
    c_p: { symbol: "c_p", kind: "specificHeat" },
    rho_w: { symbol: "rho_w", kind: "density" },
    c_p_w: { symbol: "c_p_w", kind: "specificHeat" },
  },
  result: { symbol: "X_C", kind: "fraction" },
  expression: "rho * c_p / (rho_w * c_p_w)",
  sources: [{ key: "incropera-dewitt", where: "volumetric heat capacity", standing: "derived here" }],
  compute: ({ rho, c_p, rho_w, c_p_w }) => (rho * c_p) / (rho_w * c_p_w),
});
