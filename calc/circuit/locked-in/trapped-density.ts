import { explicit } from "../../relation/relation.ts";

/**
 * Density in kg/m³ of water locked into a vessel that warms and stretches: linear expansion of its wall in 1/K, rise of temperature in
 * K, what of its volume each Pa adds, rise of pressure in Pa.
 *
 * @example trappedDensity.compute({ rho_in: 998.2, alpha_l: 12e-6, Delta_T: 10, chi_V: 5e-11, Delta_p: 3e6 }) // 997.69 kg/m³
 */
export const trappedDensity = explicit({
  id: "circuit/locked-in/trapped-density",
  title: "Density of locked-in water",
  inputs: {
    rho_in: { symbol: "rho_in", kind: "density" },
    alpha_l: { symbol: "alpha_l", kind: "expansivity" },
    Delta_T: { symbol: "Delta_T", kind: "temperatureDifference" },
    chi_V: { symbol: "chi_V", kind: "compliance" },
    Delta_p: { symbol: "Delta_p", kind: "pressureDifference" },
  },
  result: { symbol: "rho_out", kind: "density" },
  expression: "rho_in / (1 + 3 * alpha_l * Delta_T) * (1 / (1 + chi_V * Delta_p))",
  working: "si",
  sources: [
    { key: "white-fluid-mechanics", where: "mass kept, volume of the vessel", standing: "derived here" },
  ],
  compute: ({ rho_in, alpha_l, Delta_T, chi_V, Delta_p }) =>
    rho_in / ((1 + 3 * alpha_l * Delta_T) * (1 + chi_V * Delta_p)),
});
