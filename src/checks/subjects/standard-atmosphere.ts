import { geometricAltitude } from "../../../calc/atmosphere/geometric-altitude.ts";
import { standardPressure } from "../../../calc/atmosphere/standard-pressure.ts";
import { standardTemperature } from "../../../calc/atmosphere/standard-temperature.ts";
import { density } from "../../../calc/fluids/density.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { subject } from "../subject.ts";

export default subject<{ H: number }>(({ H }, trace) => {
  const there = "standard atmosphere";
  const T = trace.use(standardTemperature, { H }, there);
  const p = trace.use(standardPressure, { H }, there);
  const R_m = trace.use(gasConstant, { w: 0 }, there);
  return {
    T,
    p,
    rho: trace.use(density, { p, R_m, T }, there),
    Z: trace.use(geometricAltitude, { H }, there),
  };
});
