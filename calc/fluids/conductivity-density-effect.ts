import { property } from "../relation/relation.ts";
import { type ResidualTerm, residualSeries } from "./residual-series.ts";

const terms: readonly ResidualTerm[] = [
  [8.743, 0.1, 1, 0],
  [14.76, 0, 2, 0],
  [-16.62, 0.5, 3, 2],
  [3.793, 2.7, 7, 2],
  [-6.142, 0.3, 7, 2],
  [-0.3778, 1.3, 11, 2],
];

/**
 * What density adds to the thermal conductivity of dry air, W/(m K): T in K, rho in kg/m³. Add it to fluids/conductivity.
 *
 * The paper adds a third part, which grows without bound at the critical point (132.6 K). It is left out: it is nothing
 * above 265.3 K, less than 0.06 % at 230 K and 2 MPa, and 4 % at 200 K and 290 kg/m³.
 * Source: Lemmon and Jacobsen 2004, residual part.
 *
 * @example conductivityDensityEffect.compute({ T: 300, rho: 144.793 }) // 6.253e-3 W/(m K)
 */
export const conductivityDensityEffect = property({
  id: "fluids/conductivity-density-effect",
  title: "What density adds to the thermal conductivity of air",
  inputs: { T: { symbol: "T", kind: "temperature" }, rho: { symbol: "rho", kind: "density" } },
  result: { symbol: "Delta_k", kind: "conductivity" },
  name: "Delta_k",
  tex: String.raw`\begin{gathered} \frac{\Delta k(T, \rho)}{\mathrm{mW/(m\,K)}} = \sum_{i=1}^{6} N_i\,\tau^{t_i}\,\delta^{d_i}\,e^{-\gamma_i\,\delta^2} \\ \tau = \frac{132.6312\,\mathrm{K}}{T}, \quad \delta = \frac{\rho}{302.551\,\mathrm{kg/m^3}} \end{gathered}`,
  sources: [
    { key: "lemmon-jacobsen-2004", where: "residual part of the conductivity", standing: "from memory" },
  ],
  ranges: [
    {
      input: "T",
      from: 230,
      to: 600,
      says: "The part of the conductivity that comes with density was not checked at a temperature past the bound. Cold and dense air conducts better than this says, because the growth near the critical point of air is left out.",
    },
    {
      input: "rho",
      from: 0,
      to: 144.8,
      says: "The part of the conductivity that comes with density was not checked at a density past the bound.",
    },
  ],
  accuracy: "2 % of the conductivity",
  compute: ({ T, rho }) => 1e-3 * residualSeries(terms, T, rho),
});
