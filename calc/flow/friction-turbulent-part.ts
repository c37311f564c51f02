import { explicit } from "../relation/relation.ts";

/**
 * The turbulent part of the friction factor for all regimes, from the argument of its logarithm.
 *
 * @example frictionTurbulentPart.compute({ Theta_k: 0.00020922 }) // 1.2427e21
 */
export const frictionTurbulentPart = explicit({
  id: "flow/friction-turbulent-part",
  title: "Friction factor for all regimes, turbulent part",
  inputs: { Theta_k: { symbol: "Theta_k", kind: "ratio" } },
  result: { symbol: "Theta_t", kind: "ratio" },
  expression: "(2.457 * log(Theta_k))^16",
  sources: [
    { key: "churchill-1977", where: "equation for all regimes, the turbulent part", standing: "from memory" },
  ],
  compute: ({ Theta_k }) => (2.457 * Math.log(Theta_k)) ** 16,
});
