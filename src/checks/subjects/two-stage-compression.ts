import { airState, stageWords, throughStage } from "../../../calc/charge/stage.ts";
import { acceptCompressor } from "../../../calc/compression/compress.ts";
import { isentropicEfficiency } from "../../../calc/compression/isentropic-efficiency.ts";
import { isentropicTemperature } from "../../../calc/compression/isentropic-temperature.ts";
import { acceptCooler } from "../../../calc/exchanger/cooler.ts";
import { sensibleDuty } from "../../../calc/exchanger/sensible-duty.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { temperatureEntropy } from "../../../calc/fluids/temperature-entropy.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  T1: number;
  p1: number;
  pr1: number;
  eta1: number;
  eff1: number;
  Tc1: number;
  dp1: number;
  pr2: number;
  eta2: number;
  eff2: number;
  Tc2: number;
  dp2: number;
}

const names = { P: "P", T_w_in: "T_w_in", T_out: "T_out", Delta_p: "Delta_p", zeta: "zeta" };
const w = 0;

/** Two stages, each with its cooler, for a kilogram of dry air. */
export default subject<Given>((given, trace) => {
  const stage = (eta_s: number, P: number, T_w_in: number, zeta: number, which: "first" | "second") => ({
    machine: acceptCompressor({ efficiency: "isentropic", eta_s, heatCapacity: "real" }),
    cooler: acceptCooler({ cooler: "effectiveness", P, T_w_in, zeta }, names),
    words: stageWords[which],
  });
  const R_m = trace.use(gasConstant, { w }, "dry air");
  const inlet = airState({ p: given.p1, T: given.T1, w, R_m }, trace, "inlet");
  const one = throughStage(
    stage(given.eta1, given.eff1, given.Tc1, given.dp1, "first"),
    inlet,
    given.pr1,
    trace,
  );
  const two = throughStage(
    stage(given.eta2, given.eff2, given.Tc2, given.dp2, "second"),
    one.after,
    given.pr2,
    trace,
  );
  const h = (T: number) => trace.use(enthalpy, { T, w }, "dry air");
  const heat = ({ before, after }: typeof one) =>
    trace.use(sensibleDuty, { m_a: 1, h_in: h(before.T), h_out: h(after.T) }, "cooler");
  const work = one.compressed.Delta_h + two.compressed.Delta_h;
  const s_in = trace.use(temperatureEntropy, { T: given.T1, w }, "inlet");
  const T_s = trace.use(
    isentropicTemperature,
    { s_in, R_m, r: two.before.p / given.p1, w },
    "one ideal compression",
  );
  const h_in = h(given.T1);
  return {
    p2: one.before.p,
    T2: one.before.T,
    w1: one.compressed.Delta_h,
    p3: one.after.p,
    T3: one.after.T,
    p4: two.before.p,
    T4: two.before.T,
    w2: two.compressed.Delta_h,
    p5: two.after.p,
    T5: two.after.T,
    w: work,
    q1: heat(one),
    q2: heat(two),
    rho5: two.after.rho,
    eta_overall: trace.use(
      isentropicEfficiency,
      { h_in, h_s: h(T_s), h_out: h_in + work },
      "both compressors as one",
    ),
  };
});
