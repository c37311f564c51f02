import { property } from "../../relation/relation.ts";
import { type MixturePolynomial, mixturePolynomial, mixtureRanges } from "./mixture-polynomial.ts";

const polynomial: MixturePolynomial = {
  T_base: 304.878,
  x_base: 0.308462,
  c: [
    [1034, 131.1, 0.749, -106.2, -96.23, 489.1],
    [-0.4781, -0.6876, 0.7855, 1.229, -7.211, 0],
    [-0.002692, 0.004805, -0.003995, -0.01153, 0, 0],
    [4.725e-6, 1.69e-6, 4.982e-5, 0, 0, 0],
  ],
};

/**
 * Density in kg/m³ of a liquid mixture of ethylene glycol and water at T in K, with the mass fraction x_g of glycol: 0 to
 * 0.6, above freezing to 373 K. Inhibitors are not counted.
 *
 * @example ethyleneGlycolDensity.compute({ T: 293.15, x_g: 0.5 }) // 1064.9 kg/m³
 */
export const ethyleneGlycolDensity = property({
  id: "fluids/glycol/ethylene-glycol-density",
  title: "Density of ethylene glycol in water",
  inputs: { T: { symbol: "T", kind: "temperature" }, x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "rho", kind: "density" },
  name: "rho_EG",
  tex: String.raw`\frac{\rho}{\mathrm{kg/m^3}} = \sum_{i=0}^{3} \sum_{j=0}^{5} c_{ij} \left(\frac{T}{\mathrm{K}} - 304.878\right)^{\! i} (x_\mathrm{g} - 0.308462)^j`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for ethylene glycol, density",
      standing: "open reference read",
    },
  ],
  ranges: mixtureRanges("ethylene glycol"),
  compute: ({ T, x_g }) => mixturePolynomial(polynomial, T, x_g),
});
