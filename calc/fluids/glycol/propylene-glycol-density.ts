import { property } from "../../relation/relation.ts";
import { type MixturePolynomial, mixturePolynomial, mixtureRanges } from "./mixture-polynomial.ts";

const polynomial: MixturePolynomial = {
  T_base: 305.8583,
  x_base: 0.307031,
  c: [
    [1018, 76.04, -24.98, -155, -113.1, 234.2],
    [-0.5406, -0.945, 0.27, 2.829, -2.221, 0],
    [-0.002666, 0.005541, -0.004018, -0.007175, 0, 0],
    [1.347e-5, -1.343e-5, 3.376e-5, 0, 0, 0],
  ],
};

/**
 * Density in kg/m³ of a liquid mixture of propylene glycol and water at T in K, with the mass fraction x_g of glycol: 0 to
 * 0.6, above freezing to 373 K. Inhibitors are not counted.
 *
 * @example propyleneGlycolDensity.compute({ T: 293.15, x_g: 0.5 }) // 1039.1 kg/m³
 */
export const propyleneGlycolDensity = property({
  id: "fluids/glycol/propylene-glycol-density",
  title: "Density of propylene glycol in water",
  inputs: { T: { symbol: "T", kind: "temperature" }, x_g: { symbol: "x_g", kind: "fraction" } },
  result: { symbol: "rho", kind: "density" },
  name: "rho_PG",
  tex: String.raw`\frac{\rho}{\mathrm{kg/m^3}} = \sum_{i=0}^{3} \sum_{j=0}^{5} c_{ij} \left(\frac{T}{\mathrm{K}} - 305.8583\right)^{\! i} (x_\mathrm{g} - 0.307031)^j`,
  sources: [
    {
      key: "melinder-2010",
      where: "polynomial for propylene glycol, density",
      standing: "open reference read",
    },
  ],
  ranges: mixtureRanges("propylene glycol"),
  compute: ({ T, x_g }) => mixturePolynomial(polynomial, T, x_g),
});
