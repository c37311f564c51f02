import { lockedIn } from "../../../calc/circuit/locked-in/locked-in-pressure.ts";
import { subject } from "../subject.ts";

type Given = Record<"T1" | "T2" | "p1" | "alpha" | "chi", number>;

export default subject<Given>(({ T1, T2, p1, alpha, chi }, trace) => ({
  rise: lockedIn({ T_in: T1, T_out: T2, p_in: p1, alpha_l: alpha, chi_V: chi }, trace).Delta_p,
}));
