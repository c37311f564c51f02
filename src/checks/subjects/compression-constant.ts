import { constantHeatCapacity } from "../../../calc/compression/constant-heat-capacity.ts";
import { constantIsentropicTemperature } from "../../../calc/compression/constant-isentropic-temperature.ts";
import { constantWork } from "../../../calc/compression/constant-work.ts";
import { pressureRatio } from "../../../calc/compression/pressure-ratio.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  R: number;
  n: number;
  T1: number;
  p1: number;
  p2: number;
}

/** Reversible compression of an ideal gas with one exponent; with n in place of kappa it is the polytropic one. */
export default subject<Given>(({ R, n, T1, p1, p2 }, trace) => {
  const where = "compressor";
  const r = trace.use(pressureRatio, { p_in: p1, p_out: p2 }, where);
  const c_p = trace.use(constantHeatCapacity, { R_m: R, kappa: n }, where);
  const T_out = trace.use(constantIsentropicTemperature, { T_in: T1, r, kappa: n }, where);
  return { w: trace.use(constantWork, { c_p, T_in: T1, T_out }, where) };
});
