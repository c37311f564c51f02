import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { dewPoint } from "./dew-point.ts";
import { enhancementFactor } from "./enhancement-factor.ts";
import { saturationTemperature } from "./saturation-temperature.ts";
import { vapourPressureFromHumidityRatio } from "./vapour-pressure-from-humidity-ratio.ts";

/** Frost point of -100 °C: below it the air is called dry, and has no dew point worth a number. Pa. */
const DRY = 1.4e-3;

/**
 * Dew point in K of vapour at `p_v` Pa in air at `p` Pa absolute, or undefined where the air is practically dry.
 *
 * The enhancement factor belongs to the dew point, which depends on the factor: both are repeated until the dew point
 * moves by less than 1e-9 K. The trace gets the last round only. Throws an Error after 50 rounds.
 */
export function dewPointAtPressure(
  state: { readonly p_v: SI; readonly p: SI },
  trace: Trace,
  where: string,
): SI | undefined {
  const { p_v, p } = state;
  if (p_v < DRY) return undefined;
  let T = saturationTemperature(p_v);
  for (let i = 0; i < 50; i++) {
    const next = saturationTemperature(p_v / enhancementFactor.compute({ T, p }));
    const moved = Math.abs(next - T);
    T = next;
    if (moved < 1e-9) {
      const f_e = trace.use(enhancementFactor, { T, p }, where);
      return trace.use(dewPoint, { p_v, f_e }, where);
    }
  }
  throw new Error(`no dew point for ${p_v} Pa of vapour at ${p} Pa`);
}

/** The same of charge with the humidity ratio w in kg/kg. `name` is what the working calls the charge, `where` where it is so humid. */
export function dewPointOfCharge(
  charge: { readonly w: SI; readonly p: SI },
  trace: Trace,
  name: string,
  where = name,
): SI | undefined {
  const p_v = trace.use(vapourPressureFromHumidityRatio, charge, where);
  return dewPointAtPressure({ p_v, p: charge.p }, trace, `${name} at its own pressure`);
}
