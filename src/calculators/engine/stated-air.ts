import { statedFlow } from "../../../calc/fluids/stated-flow.ts";
import type { Surroundings } from "./entry.ts";

/** Surroundings in which a mass flow may be typed as a flow at stated conditions: `1,200 cfm at 60 °F 14.7 psi`. */
export const withStatedAir = (around: Surroundings): Surroundings => ({
  ...around,
  massOfFlow: (V_dot, T, p) => statedFlow({ V_dot, T, p, conditions: "meter" }).m_a,
});
