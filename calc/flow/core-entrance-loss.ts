import { explicit } from "../relation/relation.ts";

/**
 * Pressure in Pa that air loses at the entrance of a core: what speeds it up into the passages, and the entrance loss. Mass
 * flow per area G in kg/(m² s), density before the core in kg/m³.
 *
 * @example coreEntranceLoss.compute({ G: 16.8776, rho_in: 1.97701, sigma: 0.63032, K_c: 0.1559 }) // 54.65 Pa
 */
export const coreEntranceLoss = explicit({
  id: "flow/core-entrance-loss",
  title: "Pressure lost at the entrance of a core",
  inputs: {
    G: { symbol: "G", kind: "massFlux" },
    rho_in: { symbol: "rho_in", kind: "density" },
    sigma: { symbol: "sigma", kind: "fraction" },
    K_c: { symbol: "K_c", kind: "ratio" },
  },
  result: { symbol: "Delta_p_ent", kind: "pressureDifference" },
  expression: "G^2 / (2 * rho_in) * (1 - sigma^2 + K_c)",
  working: "si",
  sources: [{ key: "kays-london", where: "chapter 2, pressure drop of a core", standing: "from memory" }],
  compute: ({ G, rho_in, sigma, K_c }) => (G ** 2 / (2 * rho_in)) * (1 - sigma ** 2 + K_c),
});
