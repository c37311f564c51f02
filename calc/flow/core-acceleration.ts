import { explicit } from "../relation/relation.ts";

/**
 * Pressure in Pa that it takes to change the speed of the air inside a core. Air that cools slows down, and gives pressure
 * back: the number is negative. Mass flow per area G in kg/(m² s), densities in kg/m³.
 *
 * @example coreAcceleration.compute({ G: 16.8776, rho_out: 2.72159, rho_in: 1.97701 }) // -39.42 Pa
 */
export const coreAcceleration = explicit({
  id: "flow/core-acceleration",
  title: "Pressure that changes the speed inside a core",
  inputs: {
    G: { symbol: "G", kind: "massFlux" },
    rho_out: { symbol: "rho_out", kind: "density" },
    rho_in: { symbol: "rho_in", kind: "density" },
  },
  result: { symbol: "Delta_p_acc", kind: "pressureDifference" },
  expression: "G^2 * (1 / rho_out - 1 / rho_in)",
  working: "si",
  sources: [{ key: "kays-london", where: "chapter 2, pressure drop of a core", standing: "from memory" }],
  compute: ({ G, rho_out, rho_in }) => G ** 2 * (1 / rho_out - 1 / rho_in),
});
