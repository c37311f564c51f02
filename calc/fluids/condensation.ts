import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { enhancementFactor } from "./enhancement-factor.ts";
import { saturatedHumidityRatio } from "./saturated-humidity-ratio.ts";
import { CRITICAL_TEMPERATURE } from "./saturation-over-water.ts";
import { saturationPressure } from "./saturation-pressure.ts";
import { vapourPressureFromHumidityRatio } from "./vapour-pressure-from-humidity-ratio.ts";

/**
 * Humidity ratio that air keeps, kg/kg, when it comes to `T` in K and `p` in Pa absolute with `w`: that of saturated air
 * where it cannot hold all of its vapour. The drops are taken to leave the air. Steps are recorded only where water
 * condenses.
 */
export function keptHumidity(
  state: { readonly T: SI; readonly p: SI; readonly w: SI },
  trace: Trace,
  where: string,
): SI {
  const { T, p, w } = state;
  if (w === 0 || T >= CRITICAL_TEMPERATURE) return w;
  const p_v = vapourPressureFromHumidityRatio.compute({ w, p });
  // The enhancement factor is above 1 at any state that condenses, so unsaturated air is told apart without it.
  if (p_v <= saturationPressure.compute({ T })) return w;
  const saturated = (through: Trace) => {
    const p_ws = through.use(saturationPressure, { T }, where);
    const f_e = through.use(enhancementFactor, { T, p }, where);
    return through.use(saturatedHumidityRatio, { f_e, p_ws, p }, where);
  };
  const w_s = saturated(plain);
  return w_s < w ? saturated(trace) : w;
}
