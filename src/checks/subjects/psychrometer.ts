import { density } from "../../../calc/fluids/density.ts";
import { dewPoint } from "../../../calc/fluids/dew-point.ts";
import { dryAirDensity } from "../../../calc/fluids/dry-air-density.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { humidityRatioFromWetBulb } from "../../../calc/fluids/humidity-ratio-from-wet-bulb.ts";
import { relativeHumidity } from "../../../calc/fluids/relative-humidity.ts";
import { saturatedHumidityRatio } from "../../../calc/fluids/saturated-humidity-ratio.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { specificVolume } from "../../../calc/fluids/specific-volume.ts";
import { vapourPressureFromHumidityRatio } from "../../../calc/fluids/vapour-pressure-from-humidity-ratio.ts";
import { wickLatentHeat } from "../../../calc/fluids/wick-latent-heat.ts";
import { subject } from "../subject.ts";

/** Dry bulb, wet bulb and barometer given, without the enhancement factor (f_e = 1). */
export default subject<{ T: number; Twb: number; p: number }>(({ T, Twb, p }, trace) => {
  const [wick, air] = ["wick", "moist air"];
  const f_e = 1;
  const p_wick = trace.use(saturationPressure, { T: Twb }, wick);
  const w_s = trace.use(saturatedHumidityRatio, { f_e, p_ws: p_wick, p }, wick);
  const L_wb = trace.use(wickLatentHeat, { T_wb: Twb }, wick);
  const w = trace.use(humidityRatioFromWetBulb, { T, T_wb: Twb, L_wb, w_s }, air);
  const p_v = trace.use(vapourPressureFromHumidityRatio, { w, p }, air);
  const p_ws = trace.use(saturationPressure, { T }, air);
  const R_m = trace.use(gasConstant, { w }, air);
  const rho = trace.use(density, { p, R_m, T }, air);
  return {
    W: w,
    RH: trace.use(relativeHumidity, { p_v, f_e, p_ws }, air),
    Tdp: trace.use(dewPoint, { p_v, f_e }, air),
    v: trace.use(specificVolume, { rho: trace.use(dryAirDensity, { rho, w }, air) }, air),
  };
});
