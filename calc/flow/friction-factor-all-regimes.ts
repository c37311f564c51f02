import { explicit } from "../relation/relation.ts";

/**
 * Darcy friction factor of a round pipe in laminar, turbulent and the flow between, in one smooth formula; Theta_t and
 * Theta_l are its named parts. Up to 3 % from flow/turbulent-friction-factor, most near Re 4000.
 *
 * @example frictionFactorAllRegimes.compute({ Re: 1e5, Theta: 2.2827e-32 }) // 0.01846
 */
export const frictionFactorAllRegimes = explicit({
  id: "flow/friction-factor-all-regimes",
  title: "Friction factor for all regimes",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
    Theta: { symbol: "Theta", kind: "ratio" },
  },
  result: { symbol: "f", kind: "ratio" },
  expression: "8 * ((8 / Re)^12 + Theta)^(1/12)",
  sources: [{ key: "churchill-1977", where: "equation for all regimes", standing: "from memory" }],
  accuracy: "3 % from the implicit formula for turbulent flow, and the roughness is seldom known so well",
  compute: ({ Re, Theta }) => 8 * ((8 / Re) ** 12 + Theta) ** (1 / 12),
});
