import { explicit } from "../../relation/relation.ts";

/**
 * Volume fraction of glycol to pour together for a mass fraction x_g, from the densities in kg/m³ of glycol and water.
 *
 * @example glycolVolumeFraction.compute({ x_g: 0.5, rho_g: 1113, rho_w: 998.2 }) // 0.47281
 */
export const glycolVolumeFraction = explicit({
  id: "fluids/glycol/glycol-volume-fraction",
  title: "Volume fraction of glycol from masses",
  inputs: {
    x_g: { symbol: "x_g", kind: "fraction" },
    rho_g: { symbol: "rho_g", kind: "density" },
    rho_w: { symbol: "rho_w", kind: "density" },
  },
  result: { symbol: "phi_g", kind: "fraction" },
  expression: "x_g * rho_w / (x_g * rho_w + (1 - x_g) * rho_g)",
  sources: [
    { key: "ashrae-2017", where: "chapter 31, glycols by mass and by volume", standing: "from memory" },
  ],
  compute: ({ x_g, rho_g, rho_w }) => (x_g * rho_w) / (x_g * rho_w + (1 - x_g) * rho_g),
});
