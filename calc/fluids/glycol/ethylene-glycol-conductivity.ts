import { property } from "../../relation/relation.ts";
import { type MixturePolynomial, mixturePolynomial, mixtureRanges } from "./mixture-polynomial.ts";

const polynomial: MixturePolynomial = {
  T_base: 304.878,
  x_base: 0.308462,
  c: [
    [0.472, -0.4286, 0.1747, 0.03017, -0.1322, 0.2678],
    [0.0008903, -0.001473, 0.0006814, -0.002412, 0.002555, 0],
    [-1.058e-6, 1.059e-5, -3.612e-5, 4.004e-5, 0, 0],
    [-2.789e-9, -1.142e-8, 2.365e-8, 0, 0, 0],
  ],
};

/**
 * Thermal conductivity in W/(m K) of a liquid mixture of ethylene glycol and water at T in K, with the mass fraction x_g of glycol: 0 to
 * 0.6, above freezing to 373 K. Inhibitors are not counted.
 *
 * @example ethyleneGlycolConductivity.compute({ T: 293.15, x_g: 0.5 }) // 0.38915 W/(m K)
 */
export const ethyleneGlycolConductivity = property({
  id: "fluids/glycol/ethylene-glycol-conductivity",
  title: "Thermal conductivity of ethylene glycol in water",
  inputs: { T: { symbol: "T", kind: "temperature" }, x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "k", kind: "conductivity" },
  name: "k_EG",
  tex: String.raw`\frac{k}{\mathrm{W/(m\,K)}} = \sum_{i=0}^{3} \sum_{j=0}^{5} c_{ij} \left(\frac{T}{\mathrm{K}} - 304.878\right)^{\! i} (x_\mathrm{g} - 0.308462)^j`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for ethylene glycol, thermal conductivity",
      standing: "open reference read",
    },
  ],
  ranges: mixtureRanges("ethylene glycol"),
  compute: ({ T, x_g }) => mixturePolynomial(polynomial, T, x_g),
});
