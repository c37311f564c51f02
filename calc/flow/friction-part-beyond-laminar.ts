import { explicit } from "../relation/relation.ts";

/**
 * What the friction factor for all regimes adds to the laminar part, from its turbulent part and that of the transition.
 *
 * @example frictionPartBeyondLaminar.compute({ Theta_t: 1.2427e21, Theta_l: 1.55e-7 }) // 2.2827e-32
 */
export const frictionPartBeyondLaminar = explicit({
  id: "flow/friction-part-beyond-laminar",
  title: "Friction factor for all regimes, part beyond laminar flow",
  inputs: {
    Theta_t: { symbol: "Theta_t", kind: "ratio" },
    Theta_l: { symbol: "Theta_l", kind: "ratio" },
  },
  result: { symbol: "Theta", kind: "ratio" },
  expression: "(Theta_t + Theta_l)^(-1.5)",
  sources: [{ key: "churchill-1977", where: "equation for all regimes", standing: "from memory" }],
  compute: ({ Theta_t, Theta_l }) => (Theta_t + Theta_l) ** -1.5,
});
