import { property } from "../../relation/relation.ts";
import { type MixturePolynomial, mixturePolynomial, mixtureRanges } from "./mixture-polynomial.ts";

const polynomial: MixturePolynomial = {
  T_base: 305.8583,
  x_base: 0.307031,
  c: [
    [0.4513, -0.4795, 0.2076, -0.09083, -0.05952, 0.2104],
    [0.0007955, -0.001678, 0.001563, -0.002518, -0.003605, 0],
    [3.482e-8, 8.941e-6, -4.615e-5, 6.543e-5, 0, 0],
    [-5.966e-9, 1.493e-8, 9.897e-8, 0, 0, 0],
  ],
};

/**
 * Thermal conductivity in W/(m K) of a liquid mixture of propylene glycol and water at T in K, with the mass fraction x_g of glycol: 0 to
 * 0.6, above freezing to 373 K. Inhibitors are not counted.
 *
 * @example propyleneGlycolConductivity.compute({ T: 293.15, x_g: 0.5 }) // 0.35946 W/(m K)
 */
export const propyleneGlycolConductivity = property({
  id: "fluids/glycol/propylene-glycol-conductivity",
  title: "Thermal conductivity of propylene glycol in water",
  inputs: { T: { symbol: "T", kind: "temperature" }, x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "k", kind: "conductivity" },
  name: "k_PG",
  tex: String.raw`\frac{k}{\mathrm{W/(m\,K)}} = \sum_{i=0}^{3} \sum_{j=0}^{5} c_{ij} \left(\frac{T}{\mathrm{K}} - 305.8583\right)^{\! i} (x_\mathrm{g} - 0.307031)^j`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for propylene glycol, thermal conductivity",
      standing: "open reference read",
    },
  ],
  ranges: mixtureRanges("propylene glycol"),
  compute: ({ T, x_g }) => mixturePolynomial(polynomial, T, x_g),
});
