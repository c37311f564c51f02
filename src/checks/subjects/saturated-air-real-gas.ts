import { density } from "../../../calc/fluids/density.ts";
import { enhancementFactor } from "../../../calc/fluids/enhancement-factor.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { saturatedHumidityRatio } from "../../../calc/fluids/saturated-humidity-ratio.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { subject } from "../subject.ts";

export default subject<{ T: number; p: number }>(({ T, p }, trace) => {
  const air = "saturated air";
  const f_e = trace.use(enhancementFactor, { T, p }, air);
  const p_ws = trace.use(saturationPressure, { T }, air);
  const w = trace.use(saturatedHumidityRatio, { f_e, p_ws, p }, air);
  const R_m = trace.use(gasConstant, { w }, air);
  return { f: f_e, Ws: w, rho: trace.use(density, { p, R_m, T }, air) };
});
