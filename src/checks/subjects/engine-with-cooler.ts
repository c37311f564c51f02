import { engineWithCooler } from "../../../calc/charge/engine-with-cooler.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  arrangement: string;
  T0: number;
  p0: number;
  pr: number;
  eta: number;
  Tc: number;
  mw: number;
  cpw: number;
  UAa: number;
  UAw: number;
  na: number;
  m_ref: number;
  dp_ref: number;
  Vd: number;
  n: number;
  eta_v: number;
}

const arrangements: Readonly<Record<string, string>> = {
  counterflow: "counterflow",
  crossflow_unmixed: "cross-unmixed",
};

/** The constants that the cases were computed with, and the four-stroke cycle. */
const constant = { kappa: 1.4, R_m: 287.05, c_p: 1006, n_p: 1.8, n_R: 2 };

export default subject<Given>((given, trace) => {
  const found = engineWithCooler(
    {
      ...constant,
      arrangement: arrangements[given.arrangement] ?? given.arrangement,
      T_1: given.T0,
      p_1: given.p0,
      r: given.pr,
      eta_s: given.eta,
      T_w_in: given.Tc,
      m_w: given.mw,
      c_w: given.cpw,
      UA_ref: given.UAa,
      n_h: given.na,
      UA_w: given.UAw,
      Delta_p_ref: given.dp_ref,
      m_ref: given.m_ref,
      V_d: given.Vd,
      n: given.n,
      eta_v: given.eta_v,
    },
    trace,
  );
  return {
    m: found.m_a,
    T2: found.T_2,
    p2: found.p_2,
    T3: found.T_3,
    p3: found.p_3,
    UA: found.UA,
    // The cases have it on the smaller stream, which is the air in all of them.
    eff: found.R > 1 ? found.P * found.R : found.P,
    Q: found.Q,
    Tw_out: found.T_w_out,
    rho3: found.rho_3,
  };
});
