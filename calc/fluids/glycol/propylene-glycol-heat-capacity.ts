import { property } from "../../relation/relation.ts";
import { type MixturePolynomial, mixturePolynomial, mixtureRanges } from "./mixture-polynomial.ts";

const polynomial: MixturePolynomial = {
  T_base: 305.8583,
  x_base: 0.307031,
  c: [
    [3882, -1304, -1598, 353.9, 5000, -4959],
    [2.699, 5.07, 0.9534, 31.02, -71.35, 0],
    [-0.001659, -0.004752, 0.1167, -0.295, 0, 0],
    [-1.032e-5, 0.0001522, -0.000487, 0, 0, 0],
  ],
};

/**
 * Heat capacity at constant pressure in J/(kg K) of a liquid mixture of propylene glycol and water at T in K, with the mass fraction x_g of glycol: 0 to
 * 0.6, above freezing to 373 K. Inhibitors are not counted.
 *
 * @example propyleneGlycolHeatCapacity.compute({ T: 293.15, x_g: 0.5 }) // 3530.2 J/(kg K)
 */
export const propyleneGlycolHeatCapacity = property({
  id: "fluids/glycol/propylene-glycol-heat-capacity",
  title: "Heat capacity of propylene glycol in water",
  inputs: { T: { symbol: "T", kind: "temperature" }, x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "c_p", kind: "specificHeat" },
  name: "c_p_PG",
  tex: String.raw`\frac{c_p}{\mathrm{J/(kg\,K)}} = \sum_{i=0}^{3} \sum_{j=0}^{5} c_{ij} \left(\frac{T}{\mathrm{K}} - 305.8583\right)^{\! i} (x_\mathrm{g} - 0.307031)^j`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for propylene glycol, heat capacity at constant pressure",
      standing: "open reference read",
    },
  ],
  ranges: mixtureRanges("propylene glycol"),
  compute: ({ T, x_g }) => mixturePolynomial(polynomial, T, x_g),
});
