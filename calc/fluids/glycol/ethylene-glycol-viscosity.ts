import { property } from "../../relation/relation.ts";
import { type MixturePolynomial, mixturePolynomial, mixtureRanges } from "./mixture-polynomial.ts";

const polynomial: MixturePolynomial = {
  T_base: 304.878,
  x_base: 0.308462,
  c: [
    [-6.437255, 2.471, 0.03328, 1.659, 3.089, -18.65],
    [-0.0255, -0.01171, 0.01086, 0.003157, 0.01831, 0],
    [0.0001782, 0.0001052, 0.0001051, 0.0004063, 0, 0],
    [-7.669e-7, -1.634e-6, -6.475e-6, 0, 0, 0],
  ],
};

/**
 * Viscosity in Pa s of a liquid mixture of ethylene glycol and water at T in K, with the mass fraction x_g of glycol: 0 to
 * 0.6, above freezing to 373 K. Inhibitors are not counted.
 *
 * @example ethyleneGlycolViscosity.compute({ T: 293.15, x_g: 0.5 }) // 3.6932e-3 Pa s
 */
export const ethyleneGlycolViscosity = property({
  id: "fluids/glycol/ethylene-glycol-viscosity",
  title: "Viscosity of ethylene glycol in water",
  inputs: { T: { symbol: "T", kind: "temperature" }, x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "mu", kind: "viscosity" },
  name: "mu_EG",
  tex: String.raw`\ln\frac{\mu}{\mathrm{Pa\,s}} = \sum_{i=0}^{3} \sum_{j=0}^{5} c_{ij} \left(\frac{T}{\mathrm{K}} - 304.878\right)^{\! i} (x_\mathrm{g} - 0.308462)^j`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for ethylene glycol, viscosity",
      standing: "open reference read",
    },
  ],
  ranges: mixtureRanges("ethylene glycol"),
  compute: ({ T, x_g }) => Math.exp(mixturePolynomial(polynomial, T, x_g)),
});
