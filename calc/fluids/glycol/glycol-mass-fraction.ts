import { explicit } from "../../relation/relation.ts";

/**
 * Mass fraction of glycol in a mixture, from the volumes that were poured together: the volume fraction phi_g, and the densities
 * in kg/m³ of glycol and water.
 *
 * @example glycolMassFraction.compute({ phi_g: 0.5, rho_g: 1113, rho_w: 998.2 }) // 0.5272
 */
export const glycolMassFraction = explicit({
  id: "fluids/glycol/glycol-mass-fraction",
  title: "Mass fraction of glycol from volumes",
  inputs: {
    phi_g: { symbol: "phi_g", kind: "fraction" },
    rho_g: { symbol: "rho_g", kind: "density" },
    rho_w: { symbol: "rho_w", kind: "density" },
  },
  result: { symbol: "x_g", kind: "fraction" },
  expression: "phi_g * rho_g / (phi_g * rho_g + (1 - phi_g) * rho_w)",
  sources: [
    { key: "ashrae-2017", where: "chapter 31, glycols by mass and by volume", standing: "from memory" },
  ],
  compute: ({ phi_g, rho_g, rho_w }) => (phi_g * rho_g) / (phi_g * rho_g + (1 - phi_g) * rho_w),
});
