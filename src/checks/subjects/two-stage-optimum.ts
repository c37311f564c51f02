import { twoStageSplit } from "../../../calc/charge/two-stage-split.ts";
import { constantHeatCapacity } from "../../../calc/compression/constant-heat-capacity.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  T1: number;
  p1: number;
  p4: number;
  eta1: number;
  eta2: number;
  eff: number;
  Tc: number;
  dp: number;
}

/** The constants of the file's own constant-heat-capacity columns. */
const kappa = 1.4;
const c_p = 1005;

/** The least work for a kilogram of dry air, and that at the geometric mean of the pressures. */
export default subject<Given>(({ T1, p1, p4, eta1, eta2, eff, Tc, dp }, trace) => {
  const at = (heatCapacity: "real" | "constant", r_1?: number) =>
    twoStageSplit(
      {
        p_0: p1,
        T_0: T1,
        humidity: "dry",
        m_a: 1,
        p_m: p4,
        heatCapacity,
        kappa,
        eta_s: eta1,
        eta_s_2: eta2,
        cooler: "effectiveness",
        P: eff,
        T_w_in: Tc,
        loss: "part",
        zeta: dp,
        cooler_45: "none",
        drive: "exhaust",
        drive_2: "exhaust",
        least: "shaft",
        split: r_1 === undefined ? "best" : "given",
        r_1,
      },
      trace,
    );
  const mean = Math.sqrt(p4 / p1);
  const [real, constant] = [at("real"), at("constant")];
  // Our gas constant belongs to another heat capacity at this ratio than the file's, and work goes with it.
  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  const scale = c_p / trace.use(constantHeatCapacity, { R_m, kappa }, "dry air");
  const isInside = (r_1: number) => r_1 > 1 + 1e-6 && r_1 < p4 / (p1 * (1 - dp)) - 1e-6;
  return {
    p2_opt: real.r_1 * p1,
    w_min: real.W_c12,
    interior: String(isInside(real.r_1)),
    p2_opt_const: constant.r_1 * p1,
    w_min_const: constant.W_c12 * scale,
    interior_const: String(isInside(constant.r_1)),
    w_geometric_mean: at("real", mean).W_c12,
    w_geometric_mean_const: at("constant", mean).W_c12 * scale,
  };
});
