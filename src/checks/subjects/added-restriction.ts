import { addedRestriction } from "../../../calc/circuit/orifice/added-restriction.ts";
import { subject } from "../subject.ts";

type Given = Record<"Delta_p_tgt" | "Delta_p_rig" | "m_a" | "p_in" | "T_in" | "d_l", number>;

export default subject<Given>((given, trace) => {
  const { d, Delta_p_add } = addedRestriction({ part: "none", ...given }, trace);
  return { d, Delta_p_add };
});
