import { chargePath } from "../../../calc/charge/charge-path.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  T0: number;
  p0: number;
  pr: number;
  eta: number;
  eff: number;
  Tc: number;
  dp: number;
  Vd: number;
  n: number;
  eta_v: number;
}

export default subject<Given>(({ T0, p0, pr, eta, eff, Tc, dp, Vd, n, eta_v }, trace) => {
  const path = chargePath(
    {
      p_0: p0,
      T_0: T0,
      humidity: "dry",
      wanted: "ratio",
      r: pr,
      efficiency: "isentropic",
      eta_s: eta,
      heatCapacity: "real",
      cooler: "effectiveness",
      P: eff,
      T_w_in: Tc,
      Delta_p_23: dp,
      V_d: Vd,
      n,
      cycle: "four-stroke",
      eta_v,
    },
    trace,
  );
  return {
    p2: path.p_2,
    T2: path.T_2,
    w: path.Delta_h,
    p3: path.p_3,
    T3: path.T_3,
    rho0: path.rho_0,
    rho2: path.rho_2,
    rho3: path.rho_3,
    ratio_ambient: path.D_rho,
    ratio_uncooled: path.rho_3 / path.rho_2,
    m_uncooled: path.m_a_uncooled ?? null,
    m_cooled: path.m_a,
    Q: path.Q,
  };
});
