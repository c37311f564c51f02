import { airFlow } from "../../../calc/engine/air-flow.ts";
import { lossAtFlow } from "../../../calc/flow/loss-at-flow.ts";
import { measuredExponent } from "../../../calc/flow/measured-exponent.ts";
import { measuredLossAtDensity } from "../../../calc/flow/measured-loss-at-density.ts";
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

/**
 * The loss of a cooler before an engine without a compressor, from that of the boosted engine. Less loss makes denser air, and
 * more of it, so the loss sets the flow that sets the loss. The mean density is that of inlet and outlet here, as in the
 * cases. The exponent is then found again from both states.
 */
export default subject<Given>((given, trace) => {
  const R_m = gasConstant.compute({ w: 0 });
  const rhoAt = (p: number, T: number) => density.compute({ p, R_m, T });
  const rho_ref = (rhoAt(given.p_2_ref, given.T_2_ref) + given.rho_3_ref) / 2;
  const at = (dp: number, through: Trace) => {
    const rho_3 = rhoAt(given.p - dp, given.T);
    const m = through.use(airFlow, { ...given, rho: rho_3, n_R: 2 }, "engine");
    const { n_p, m_ref } = given;
    const Delta_p_ref = through.use(lossAtFlow, { Delta_p_ref: given.dp_ref, m, m_ref, n_p }, "flow");
    const rho = (rhoAt(given.p, given.T) + rho_3) / 2;
    return { m, rho, dp: through.use(measuredLossAtDensity, { Delta_p_ref, rho_ref, rho }, "density") };
  };
  const settled = bracketedRoot((dp) => at(dp, plain).dp - dp, 0, given.p / 2, { tolerance: 1e-9 });
  const { m, rho, dp } = at(settled, trace);
  const n_found = trace.use(
    measuredExponent,
    {
      Delta_p_II: given.dp_ref,
      rho_II: rho_ref,
      Delta_p_I: dp,
      rho_I: rho,
      m_II: given.m_ref,
      m_I: m,
    },
    "both states",
  );
  return { dp, n_found };
});
