import { plateLoss } from "../../../calc/circuit/orifice/plate-loss.ts";
import { restriction } from "../../../calc/circuit/orifice/restriction.ts";
import { subject } from "../subject.ts";

type Given = Record<"D" | "m" | "rho" | "dp", number>;

/** The loss of the plate that was found comes from its own formula again. */
export default subject<Given>(({ D, m, rho, dp }, trace) => {
  const { d, beta_d } = restriction({ m, rho, d_l: D, Delta_p: dp }, trace);
  return { d, K: trace.use(plateLoss, { beta_d, C_D: 0.6 }, "plate") };
});
