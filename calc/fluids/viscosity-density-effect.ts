import { property } from "../relation/relation.ts";
import { type ResidualTerm, residualSeries } from "./residual-series.ts";

const terms: readonly ResidualTerm[] = [
  [10.72, 0.2, 1, 0],
  [1.122, 0.05, 4, 0],
  [0.002019, 2.4, 9, 0],
  [-8.876, 0.6, 1, 1],
  [-0.02916, 3.6, 8, 1],
];

/**
 * What density adds to the viscosity of dry air, Pa s: T in K, rho in kg/m³. Add it to fluids/viscosity; with the density
 * of the real gas (fluids/compressibility) the sum holds to 2 MPa. Source: Lemmon and Jacobsen 2004, residual part.
 *
 * @example viscosityDensityEffect.compute({ T: 300, rho: 144.793 }) // 2.801e-6 Pa s
 */
export const viscosityDensityEffect = property({
  id: "fluids/viscosity-density-effect",
  title: "What density adds to the viscosity of air",
  inputs: { T: { symbol: "T", kind: "temperature" }, rho: { symbol: "rho", kind: "density" } },
  result: { symbol: "Delta_mu", kind: "viscosity" },
  name: "Delta_mu",
  tex: String.raw`\begin{gathered} \frac{\Delta\mu(T, \rho)}{\mathrm{\mu Pa\,s}} = \sum_{i=1}^{5} N_i\,\tau^{t_i}\,\delta^{d_i}\,e^{-\gamma_i\,\delta} \\ \tau = \frac{132.6312\,\mathrm{K}}{T}, \quad \delta = \frac{\rho}{302.551\,\mathrm{kg/m^3}} \end{gathered}`,
  sources: [
    { key: "lemmon-jacobsen-2004", where: "residual part of the viscosity", standing: "from memory" },
  ],
  ranges: [
    {
      input: "T",
      from: 100,
      to: 600,
      says: "The part of the viscosity that comes with density was not checked at a temperature past the bound.",
    },
    {
      input: "rho",
      from: 0,
      to: 811,
      says: "The part of the viscosity that comes with density was not checked at a density past the bound.",
    },
  ],
  accuracy: "2 % of the viscosity",
  compute: ({ T, rho }) => 1e-6 * residualSeries(terms, T, rho),
});
