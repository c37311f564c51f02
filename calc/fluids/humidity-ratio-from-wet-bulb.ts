import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const c_air = constants.c_air.value;
const c_vap = constants.c_vap.value;

/**
 * Humidity ratio, kg/kg: that of air saturated at the wick, less what warmed up the air. From dry bulb T and wet bulb T_wb in K, the latent heat L_wb at the wick in J/kg, and w_s of air
 * saturated at the wet bulb. Holds for a well ventilated wick.
 *
 * @example humidityRatioFromWetBulb.compute({ T: 298.15, T_wb: 291.04, L_wb: 2459e3, w_s: 0.01293 }) // 0.00997
 */
export const humidityRatioFromWetBulb = explicit({
  id: "fluids/humidity-ratio-from-wet-bulb",
  title: "Humidity ratio from the wet bulb",
  inputs: {
    T: { symbol: "T", kind: "temperature" },
    T_wb: { symbol: "T_wb", kind: "temperature" },
    L_wb: { symbol: "L_wb", kind: "specificEnergy" },
    w_s: { symbol: "w_s", kind: "humidityRatio" },
  },
  result: { symbol: "w", kind: "humidityRatio" },
  expression: "w_s - (c_air + c_vap * w_s) * ((T - T_wb) / (L_wb + c_vap * (T - T_wb)))",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, equations 33 and 35, rearranged",
      standing: "open reference read",
    },
  ],
  compute: ({ T, T_wb, L_wb, w_s }) =>
    w_s - (c_air + c_vap * w_s) * ((T - T_wb) / (L_wb + c_vap * (T - T_wb))),
});
