import { pumpSuction } from "../../../calc/circuit/pump/pump-suction.ts";
import { subject } from "../subject.ts";

type Given = Record<"p" | "T" | "flow" | "strainer" | "height" | "needed", number>;

export default subject<Given>(({ p, T, flow, strainer, height, needed }, trace) => {
  const found = pumpSuction(
    {
      surface: "closed",
      p_surf: p,
      liquid: "water",
      T_w: T,
      loss: "pipe",
      V_w: flow / 3600,
      L: 6,
      d: 0.0525,
      k_s: 45e-6,
      K: 3,
      Delta_p_str: strainer,
      h_suc: height,
      NPSH_R: needed,
    },
    trace,
  );
  return {
    pipe: found.Delta_p_sp,
    available: found.NPSH_A,
    more: found.Delta_p_more ?? null,
    warmest: found.T_most ?? null,
  };
});
