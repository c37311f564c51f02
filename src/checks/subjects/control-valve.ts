import { controlValve } from "../../../calc/circuit/valve/control-valve.ts";
import { subject } from "../subject.ts";

type Given = Record<
  "rho" | "psat" | "pc" | "mu" | "p1" | "p2" | "Q" | "D1" | "D2" | "d" | "FL" | "Fd",
  number
>;

const word = (is: boolean) => (is ? "yes" : "no");

export default subject<Given>(({ rho, psat, pc, mu, p1, p2, Q, D1, D2, d, FL, Fd }, trace) => {
  const valve = controlValve(
    {
      wanted: "coefficient",
      liquid: "stated",
      rho_w: rho,
      mu_w: mu,
      p_v: psat,
      p_crit: pc,
      fittings: d < Math.min(D1, D2) ? "reducers" : "none",
      d_v: d,
      d_in: D1,
      d_out: D2,
      V_w: Q,
      p_in: p1,
      p_out: p2,
      F_L: FL,
      F_d: Fd,
    },
    trace,
  );
  return {
    Kv: valve.K_v * 3600,
    FF: valve.F_F,
    dp_choked: valve.Delta_p_ch,
    choked: word(valve.isChoked),
    laminar: word(!valve.isTurbulent),
  };
});
