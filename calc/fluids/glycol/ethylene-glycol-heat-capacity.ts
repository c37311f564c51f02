import { property } from "../../relation/relation.ts";
import { type MixturePolynomial, mixturePolynomial, mixtureRanges } from "./mixture-polynomial.ts";

const polynomial: MixturePolynomial = {
  T_base: 304.878,
  x_base: 0.308462,
  c: [
    [3737, -1799, -993.3, 2610, 1537, -16180],
    [2.93, 10.46, 3.516, -1.189, -42.72, 0],
    [-0.004675, -0.04147, 0.05109, -0.1643, 0, 0],
    [-1.389e-5, 1.847e-5, -0.0007138, 0, 0, 0],
  ],
};

/**
 * Heat capacity at constant pressure in J/(kg K) of a liquid mixture of ethylene glycol and water at T in K, with the mass fraction x_g of glycol: 0 to
 * 0.6, above freezing to 373 K. Inhibitors are not counted.
 *
 * @example ethyleneGlycolHeatCapacity.compute({ T: 293.15, x_g: 0.5 }) // 3312 J/(kg K)
 */
export const ethyleneGlycolHeatCapacity = property({
  id: "fluids/glycol/ethylene-glycol-heat-capacity",
  title: "Heat capacity of ethylene glycol in water",
  inputs: { T: { symbol: "T", kind: "temperature" }, x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "c_p", kind: "specificHeat" },
  name: "c_p_EG",
  tex: String.raw`\frac{c_p}{\mathrm{J/(kg\,K)}} = \sum_{i=0}^{3} \sum_{j=0}^{5} c_{ij} \left(\frac{T}{\mathrm{K}} - 304.878\right)^{\! i} (x_\mathrm{g} - 0.308462)^j`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for ethylene glycol, heat capacity at constant pressure",
      standing: "open reference read",
    },
  ],
  ranges: mixtureRanges("ethylene glycol"),
  compute: ({ T, x_g }) => mixturePolynomial(polynomial, T, x_g),
});
