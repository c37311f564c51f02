import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { numerical } from "../relation/relation.ts";
import { enhancementFactor } from "./enhancement-factor.ts";
import { humidityRatioFromWetBulb } from "./humidity-ratio-from-wet-bulb.ts";
import { saturatedHumidityRatio } from "./saturated-humidity-ratio.ts";
import { saturationPressure } from "./saturation-pressure.ts";
import { saturationTemperature } from "./saturation-temperature.ts";
import { wickLatentHeat } from "./wick-latent-heat.ts";

const COLDEST = 150;

/**
 * Wet-bulb temperature in K of air at T in K, p in Pa absolute, w in kg/kg; at most T, where the air is saturated.
 *
 * Bracketed root of the wet-bulb equation to 1e-9 K. Around 0 °C the equations for water and for ice do not quite meet;
 * the root is then at the triple point. Throws a RangeError when the air is more than saturated.
 *
 * @example wetBulb.compute({ T: 298.15, p: 101325, w: 0.00988 }) // 291.0 K
 */
export const wetBulb = numerical({
  id: "fluids/wet-bulb",
  title: "Wet-bulb temperature from the humidity ratio",
  inputs: {
    T: { symbol: "T", kind: "temperature" },
    p: { symbol: "p", kind: "pressure" },
    w: { symbol: "w", kind: "humidityRatio" },
  },
  result: { symbol: "T_wb", kind: "temperature" },
  tex: String.raw`\frac{L_\mathrm{wb}\,w_\mathrm{s} - c_\mathrm{air}(T - T_\mathrm{wb})}{L_\mathrm{wb} + c_\mathrm{vap}(T - T_\mathrm{wb})} = w`,
  method: "The wet-bulb equation is solved for the wet-bulb temperature by a bracketed root to 1e-9 K.",
  sources: [{ key: "ashrae-2017", where: "chapter 1, equations 33 and 35", standing: "open reference read" }],
  compute: ({ T, p, w }) => {
    const excess = (T_wb: number) => {
      const f_e = enhancementFactor.compute({ T: T_wb, p });
      const p_ws = saturationPressure.compute({ T: T_wb });
      const w_s = saturatedHumidityRatio.compute({ f_e, p_ws, p });
      const L_wb = wickLatentHeat.compute({ T_wb });
      return humidityRatioFromWetBulb.compute({ T, T_wb, L_wb, w_s }) - w;
    };
    const boiling = saturationTemperature(p * (1 - 1e-6));
    const highest = Math.min(T, boiling);
    // Saturated air has its wet bulb at T; rounding must not put it outside the bracket.
    if (Math.abs(excess(highest)) < 1e-12) return highest;
    return bracketedRoot(excess, COLDEST, highest, { tolerance: 1e-9 });
  },
});
