import { explicit } from "../relation/relation.ts";

/**
 * What the logarithm in the turbulent part of the friction factor is taken of: roughness k_s and bore d in m.
 *
 * @example frictionArgument.compute({ Re: 1e5, k_s: 0.0076e-3, d: 0.076 }) // 0.00020922
 */
export const frictionArgument = explicit({
  id: "flow/friction-argument",
  title: "Friction factor for all regimes, argument of the logarithm",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
    k_s: { symbol: "k_s", kind: "length" },
    d: { symbol: "d", kind: "length" },
  },
  result: { symbol: "Theta_k", kind: "ratio" },
  expression: "(7 / Re)^0.9 + 0.27 * k_s / d",
  sources: [
    { key: "churchill-1977", where: "equation for all regimes, the turbulent part", standing: "from memory" },
  ],
  compute: ({ Re, k_s, d }) => (7 / Re) ** 0.9 + (0.27 * k_s) / d,
});
