import { explicit } from "../relation/relation.ts";

/**
 * The turbulent part of the friction factor for all regimes: roughness k_s and bore d in m.
 *
 * @example frictionTurbulentPart.compute({ Re: 1e5, k_s: 0.0076e-3, d: 0.076 }) // 1.2427e21
 */
export const frictionTurbulentPart = explicit({
  id: "flow/friction-turbulent-part",
  title: "Friction factor for all regimes, turbulent part",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
    k_s: { symbol: "k_s", kind: "length" },
    d: { symbol: "d", kind: "length" },
  },
  result: { symbol: "Theta_t", kind: "ratio" },
  expression: "(2.457 * log((7 / Re)^0.9 + 0.27 * k_s / d))^16",
  sources: [
    { key: "churchill-1977", where: "equation for all regimes, the turbulent part", standing: "from memory" },
  ],
  compute: ({ Re, k_s, d }) => (2.457 * Math.log((7 / Re) ** 0.9 + (0.27 * k_s) / d)) ** 16,
});
