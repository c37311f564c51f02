import { property } from "../../relation/relation.ts";
import { type MixturePolynomial, mixturePolynomial, mixtureRanges } from "./mixture-polynomial.ts";

const polynomial: MixturePolynomial = {
  T_base: 305.8583,
  x_base: 0.307031,
  c: [
    [-6.224055, 3.328, 0.5453, -3.9, -1.587, 35.64],
    [-0.03045, -0.03984, -0.00086, 0.1054, 0.04475, 0],
    [0.0002525, 0.0004332, -0.0001593, -0.001589, 0, 0],
    [-1.399e-6, -1.86e-6, -4.465e-7, 0, 0, 0],
  ],
};

/**
 * Viscosity in Pa s of a liquid mixture of propylene glycol and water at T in K, with the mass fraction x_g of glycol: 0 to
 * 0.6, above freezing to 373 K. Inhibitors are not counted.
 *
 * @example propyleneGlycolViscosity.compute({ T: 293.15, x_g: 0.5 }) // 6.3936e-3 Pa s
 */
export const propyleneGlycolViscosity = property({
  id: "fluids/glycol/propylene-glycol-viscosity",
  title: "Viscosity of propylene glycol in water",
  inputs: { T: { symbol: "T", kind: "temperature" }, x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "mu", kind: "viscosity" },
  name: "mu_PG",
  tex: String.raw`\ln\frac{\mu}{\mathrm{Pa\,s}} = \sum_{i=0}^{3} \sum_{j=0}^{5} c_{ij} \left(\frac{T}{\mathrm{K}} - 305.8583\right)^{\! i} (x_\mathrm{g} - 0.307031)^j`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for propylene glycol, viscosity",
      standing: "open reference read",
    },
  ],
  ranges: mixtureRanges("propylene glycol"),
  compute: ({ T, x_g }) => Math.exp(mixturePolynomial(polynomial, T, x_g)),
});
