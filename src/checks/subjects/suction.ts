import { suction } from "../../../calc/circuit/pump/suction.ts";
import { subject } from "../subject.ts";

type Given = Record<"p" | "T" | "loss" | "height" | "needed", number>;

export default subject<Given>(({ p, T, loss, height, needed }, trace) => {
  const found = suction(
    { liquid: "water", T_w: T, p_surf: p, Delta_p_suc: loss, h_suc: height, NPSH_R: needed },
    trace,
  );
  return { available: found.NPSH_A, margin: found.Delta_NPSH ?? null };
});
