import { explicit } from "../relation/relation.ts";

/**
 * Pressure in Pa that friction takes in the passages of a core: Fanning factor f_F, flow length L and hydraulic diameter D_h
 * in m, mass flow per area G in kg/(m² s), mean density in kg/m³.
 *
 * @example coreFriction.compute({ f_F: 0.042711, L: 0.16, D_h: 2.4508e-3, G: 16.8776, rho_mean: 2.2903 }) // 693.6 Pa
 */
export const coreFriction = explicit({
  id: "flow/core-friction",
  title: "Pressure lost by friction in a core",
  inputs: {
    f_F: { symbol: "f_F", kind: "ratio" },
    L: { symbol: "L", kind: "length" },
    D_h: { symbol: "D_h", kind: "length" },
    G: { symbol: "G", kind: "massFlux" },
    rho_mean: { symbol: "rho_mean", kind: "density" },
  },
  result: { symbol: "Delta_p_fr", kind: "pressureDifference" },
  expression: "4 * f_F * (L / D_h) * G^2 / (2 * rho_mean)",
  working: "si",
  sources: [{ key: "kays-london", where: "chapter 2, pressure drop of a core", standing: "from memory" }],
  compute: ({ f_F, L, D_h, G, rho_mean }) => (4 * f_F * (L / D_h) * G ** 2) / (2 * rho_mean),
});
