import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import { type AmbientGiven, ambientHumidity } from "./ambient-humidity.ts";
import { density } from "./density.ts";
import { dewPointAtPressure } from "./dew-point-at-pressure.ts";
import { dryAirDensity } from "./dry-air-density.ts";
import { enhancementFactor } from "./enhancement-factor.ts";
import { gasConstant } from "./gas-constant.ts";
import { relativeHumidity } from "./relative-humidity.ts";
import { saturationPressure } from "./saturation-pressure.ts";
import { wetBulb } from "./wet-bulb.ts";

/** Pa, K, kg/kg, J/(kg K), kg/m³. The dew point is missing where the air is dry. */
export interface Ambient {
  readonly w_0: SI;
  readonly p_v_0: SI;
  readonly varphi_0: SI;
  readonly T_dp_0: SI | undefined;
  readonly T_wb_0: SI;
  readonly R_m_0: SI;
  readonly rho_0: SI;
  readonly rho_da_0: SI;
}

/**
 * The state of moist ambient air from barometer, temperature and one reading of humidity (relative humidity, dew point,
 * wet bulb, or dry). Units and refusals as in fluids/ambient-humidity.
 *
 * @example ambient({ p_0: 100e3, T_0: 298.15, humidity: "relative", varphi_0: 0.3 }).rho_0 // about 1.164 kg/m³
 */
export const ambient: Model<AmbientGiven, Ambient> = (given, trace = plain) => {
  const where = "ambient air";
  const { p_v, w } = ambientHumidity(given, trace);
  const { p_0: p, T_0: T } = given;
  const R_m = trace.use(gasConstant, { w }, where);
  const rho = trace.use(density, { p, R_m, T }, where);
  const rho_da = trace.use(dryAirDensity, { rho, w }, where);
  const p_ws = trace.use(saturationPressure, { T }, where);
  const f_e = trace.use(enhancementFactor, { T, p }, where);
  return {
    w_0: w,
    p_v_0: p_v,
    varphi_0: trace.use(relativeHumidity, { p_v, f_e, p_ws }, where),
    T_dp_0: dewPointAtPressure({ p_v, p }, trace, "ambient air at its dew point"),
    T_wb_0: trace.use(wetBulb, { T, p, w }, where),
    R_m_0: R_m,
    rho_0: rho,
    rho_da_0: rho_da,
  };
};
