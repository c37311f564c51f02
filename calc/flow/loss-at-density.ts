import { explicit } from "../relation/relation.ts";

/**
 * Pressure loss in Pa at a mean density rho in kg/m³ and a viscosity mu in Pa s, from that of the same mass flow at rho_ref and
 * mu_ref. Half as dense air has to go twice as fast, and loses twice as much. With the exponent n_p of the loss over the flow,
 * 1 in laminar flow and 2 where only edges and turns count, the viscosity has what is left to 2.
 *
 * @example lossAtDensity.compute({ Delta_p_ref: 9000, rho_ref: 2, rho: 1, mu: 18e-6, mu_ref: 22e-6, n_p: 1.8 }) // 17292 Pa
 */
export const lossAtDensity = explicit({
  id: "flow/loss-at-density",
  title: "Pressure loss at another density and viscosity",
  inputs: {
    Delta_p_ref: { symbol: "Delta_p_ref", kind: "pressureDifference" },
    rho_ref: { symbol: "rho_ref", kind: "density" },
    rho: { symbol: "rho", kind: "density" },
    mu: { symbol: "mu", kind: "viscosity" },
    mu_ref: { symbol: "mu_ref", kind: "viscosity" },
    n_p: { symbol: "n_p", kind: "ratio" },
  },
  result: { symbol: "Delta_p", kind: "pressureDifference" },
  expression: "Delta_p_ref * (rho_ref / rho) * (mu / mu_ref)^(2 - n_p)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 6, pressure drop over density", standing: "from memory" },
    {
      key: "shah-sekulic-2003",
      where: "chapter 6, friction factor as a power of the Reynolds number",
      standing: "derived here",
    },
  ],
  compute: ({ Delta_p_ref, rho_ref, rho, mu, mu_ref, n_p }) =>
    Delta_p_ref * (rho_ref / rho) * (mu / mu_ref) ** (2 - n_p),
});
