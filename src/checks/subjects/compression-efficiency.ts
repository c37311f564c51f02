import { constantIsentropicEfficiency } from "../../../calc/compression/constant-isentropic-efficiency.ts";
import { constantIsentropicTemperature } from "../../../calc/compression/constant-isentropic-temperature.ts";
import { constantPolytropicEfficiency } from "../../../calc/compression/constant-polytropic-efficiency.ts";
import { isentropicEfficiency } from "../../../calc/compression/isentropic-efficiency.ts";
import { isentropicTemperature } from "../../../calc/compression/isentropic-temperature.ts";
import { polytropicEfficiency } from "../../../calc/compression/polytropic-efficiency.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { temperatureEntropy } from "../../../calc/fluids/temperature-entropy.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  kind: "isentropic" | "polytropic";
  T1: number;
  pr: number;
  T2: number;
  T2_const: number;
}

const w = 0;
const kappa = 1.4;

/** The table of compressions read backwards: both temperatures given, the efficiency wanted. */
export default subject<Given>(({ kind, T1, pr, T2, T2_const }, trace) => {
  const where = "compressor";
  const R_m = trace.use(gasConstant, { w }, where);
  const s = (T: number) => trace.use(temperatureEntropy, { T, w }, where);
  const h = (T: number) => trace.use(enthalpy, { T, w }, where);
  if (kind === "polytropic") {
    const constant = { kappa, r: pr, T_in: T1, T_out: T2_const };
    return {
      eta: trace.use(polytropicEfficiency, { R_m, r: pr, s_in: s(T1), s_out: s(T2) }, where),
      eta_const: trace.use(constantPolytropicEfficiency, constant, where),
    };
  }
  const T_s = trace.use(isentropicTemperature, { s_in: s(T1), R_m, r: pr, w }, where);
  const T_sConst = trace.use(constantIsentropicTemperature, { T_in: T1, r: pr, kappa }, where);
  return {
    eta: trace.use(isentropicEfficiency, { h_in: h(T1), h_s: h(T_s), h_out: h(T2) }, where),
    eta_const: trace.use(constantIsentropicEfficiency, { T_in: T1, T_s: T_sConst, T_out: T2_const }, where),
  };
});
