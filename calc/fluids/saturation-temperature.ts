import { constants } from "../constants.ts";
import { overIce, overIceSlope } from "./saturation-over-ice.ts";
import { ifNinetySevenTemperature } from "./saturation-over-water.ts";

/**
 * The temperature in K at which water (above 611.657 Pa) or ice (below) has the vapour pressure `p`, Pa.
 *
 * Over water it is the backward equation of IF97, over ice Newton on the logarithm of the pressure to 1e-10 K. Holds
 * from about 1e-3 Pa to 22.064 MPa; throws an Error when Newton fails.
 */
export function saturationTemperature(p: number): number {
  if (p >= constants.p_t.value) return ifNinetySevenTemperature(p);
  // Latent heat of ice over the gas constant, about 6145 K, makes a straight line of log p against 1/T.
  let T = 1 / (1 / constants.T_t.value - Math.log(p / constants.p_t.value) / 6145);
  for (let i = 0; i < 50; i++) {
    const step = Math.log(p / overIce(T)) / overIceSlope(T);
    T += step;
    if (Math.abs(step) < 1e-10) return T;
  }
  throw new Error(`no frost point for a vapour pressure of ${p} Pa`);
}
