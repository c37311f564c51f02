import { meanDensity } from "../../../calc/charge/mean-density.ts";
import { airFlow } from "../../../calc/engine/air-flow.ts";
import { coefficientRatio } from "../../../calc/flow/coefficient-ratio.ts";
import { lossAtDensity } from "../../../calc/flow/loss-at-density.ts";
import { lossAtFlow } from "../../../calc/flow/loss-at-flow.ts";
import { measuredExponent } from "../../../calc/flow/measured-exponent.ts";
import { reynoldsRatio } from "../../../calc/flow/reynolds-ratio.ts";
import { density } from "../../../calc/fluids/density.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { bracketedRoot } from "../../../calc/numerics/bracketed-root.ts";
import { plain, type Trace } from "../../../calc/relation/trace.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  dp_ref: number;
  m_ref: number;
  p_2_ref: number;
  T_2_ref: number;
  rho_3_ref: number;
  p: number;
  T: number;
  n_p: number;
  eta_v: number;
  V_d: number;
  n: number;
}

/** The cases leave the viscosity out: one is as good as another, Pa s. */
const mu = 2e-5;

/**
 * The loss of a cooler before an engine without a compressor, from that of the boosted engine. Less loss makes denser air, and
 * more of it, so the loss sets the flow that sets the loss. The mean density is that of inlet and outlet here, as in the
 * cases. The exponent is then found again from both states.
 */
export default subject<Given>((given, trace) => {
  const R_m = gasConstant.compute({ w: 0 });
  const rhoAt = (p: number, T: number) => density.compute({ p, R_m, T });
  const rho_ref = meanDensity.compute({
    rho_in: rhoAt(given.p_2_ref, given.T_2_ref),
    rho_out: given.rho_3_ref,
  });
  const at = (dp: number, through: Trace) => {
    const rho_3 = rhoAt(given.p - dp, given.T);
    const m = through.use(airFlow, { ...given, rho: rho_3, n_R: 2 }, "engine");
    const { n_p, m_ref } = given;
    const Delta_p_ref = through.use(lossAtFlow, { Delta_p_ref: given.dp_ref, m, m_ref, n_p }, "flow");
    const rho = meanDensity.compute({ rho_in: rhoAt(given.p, given.T), rho_out: rho_3 });
    const states = { Delta_p_ref, rho_ref, rho, mu, mu_ref: mu, n_p };
    return { m, rho, dp: through.use(lossAtDensity, states, "density") };
  };
  const settled = bracketedRoot((dp) => at(dp, plain).dp - dp, 0, given.p / 2, { tolerance: 1e-9 });
  const { m, rho, dp } = at(settled, trace);
  const flows = { m_I: m, m_II: given.m_ref };
  const losses = { Delta_p_I: dp, rho_I: rho, Delta_p_II: given.dp_ref, rho_II: rho_ref };
  const X_Re = trace.use(reynoldsRatio, { ...flows, mu_I: mu, mu_II: mu }, "both states");
  const X_K = trace.use(coefficientRatio, { ...flows, ...losses }, "both states");
  return { dp, n_found: trace.use(measuredExponent, { X_K, X_Re }, "both states") };
});
