import { explicit } from "../relation/relation.ts";

/**
 * Pressure in Pa that air loses at the exit of a core, with what the slowing stream gives back taken off: mostly negative.
 * Mass flow per area G in kg/(m² s), density behind the core in kg/m³.
 *
 * @example coreExitLoss.compute({ G: 16.8776, rho_out: 2.72159, sigma: 0.63032, K_e: 0.1367 }) // -24.39 Pa
 */
export const coreExitLoss = explicit({
  id: "flow/core-exit-loss",
  title: "Pressure lost at the exit of a core",
  inputs: {
    G: { symbol: "G", kind: "massFlux" },
    rho_out: { symbol: "rho_out", kind: "density" },
    sigma: { symbol: "sigma", kind: "fraction" },
    K_e: { symbol: "K_e", kind: "ratio" },
  },
  result: { symbol: "Delta_p_exit", kind: "pressureDifference" },
  expression: "-(G^2 / (2 * rho_out)) * (1 - sigma^2 - K_e)",
  working: "si",
  sources: [{ key: "kays-london", where: "chapter 2, pressure drop of a core", standing: "from memory" }],
  compute: ({ G, rho_out, sigma, K_e }) => -(G ** 2 / (2 * rho_out)) * (1 - sigma ** 2 - K_e),
});
