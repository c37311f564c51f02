import { explicit } from "../relation/relation.ts";

/**
 * Darcy friction factor of a round pipe in laminar, turbulent and the flow between, in one smooth formula; Theta_t and
 * Theta_l are its named parts. Up to 3 % from flow/turbulent-friction-factor, most near Re 4000.
 *
 * @example frictionFactorAllRegimes.compute({ Re: 1e5, Theta_t: 1.2427e21, Theta_l: 1.5488e-7 }) // 0.01846
 */
export const frictionFactorAllRegimes = explicit({
  id: "flow/friction-factor-all-regimes",
  title: "Friction factor for all regimes",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
    Theta_t: { symbol: "Theta_t", kind: "ratio" },
    Theta_l: { symbol: "Theta_l", kind: "ratio" },
  },
  result: { symbol: "f", kind: "ratio" },
  expression: "8 * ((8 / Re)^12 + (Theta_t + Theta_l)^(-1.5))^(1/12)",
  sources: [{ key: "churchill-1977", where: "equation for all regimes", standing: "from memory" }],
  accuracy: "3 % from the implicit formula for turbulent flow, and the roughness is seldom known so well",
  compute: ({ Re, Theta_t, Theta_l }) => 8 * ((8 / Re) ** 12 + (Theta_t + Theta_l) ** -1.5) ** (1 / 12),
});
