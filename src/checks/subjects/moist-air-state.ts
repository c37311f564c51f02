import { density } from "../../../calc/fluids/density.ts";
import { dewPoint } from "../../../calc/fluids/dew-point.ts";
import { enthalpyPerDryAir } from "../../../calc/fluids/enthalpy-per-dry-air.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { humidityRatio } from "../../../calc/fluids/humidity-ratio.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { vapourPressure } from "../../../calc/fluids/vapour-pressure.ts";
import { wetBulb } from "../../../calc/fluids/wet-bulb.ts";
import { subject } from "../subject.ts";

/** The state without the enhancement factor (f_e = 1), as the handbook's ideal-gas relations have it. */
export default subject<{ T: number; RH: number; p: number }>(({ T, RH, p }, trace) => {
  const air = "moist air";
  const p_ws = trace.use(saturationPressure, { T }, air);
  const p_v = trace.use(vapourPressure, { varphi: RH, f_e: 1, p_ws }, air);
  const w = trace.use(humidityRatio, { p_v, p }, air);
  const R_m = trace.use(gasConstant, { w }, air);
  return {
    pw: p_v,
    W: w,
    Tdp: trace.use(dewPoint, { p_v, f_e: 1 }, air),
    rho: trace.use(density, { p, R_m, T }, air),
    h: trace.use(enthalpyPerDryAir, { T, w }, air),
    Twb: trace.use(wetBulb, { T, p, w }, air),
  };
});
