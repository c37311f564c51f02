import { type PowerTerm, powerSum } from "../../numerics/power-sum.ts";
import { property } from "../../relation/relation.ts";
import { critical } from "./water-constants.ts";

// IAPWS R12-08, table 2: exponents of 1/T̄ - 1 and of ρ̄ - 1, and the coefficient.
const terms: readonly PowerTerm[] = [
  [0, 0, 0.520094],
  [1, 0, 0.0850895],
  [2, 0, -1.08374],
  [3, 0, -0.289555],
  [0, 1, 0.222531],
  [1, 1, 0.999115],
  [2, 1, 1.88797],
  [3, 1, 1.26613],
  [5, 1, 0.120573],
  [0, 2, -0.281378],
  [1, 2, -0.906851],
  [2, 2, -0.772479],
  [3, 2, -0.489837],
  [4, 2, -0.25704],
  [0, 3, 0.161913],
  [1, 3, 0.257399],
  [0, 4, -0.0325372],
  [3, 4, 0.0698452],
  [4, 5, 0.00872102],
  [3, 6, -0.00435673],
  [5, 6, -0.000593264],
];
const exponent = powerSum(terms);

/**
 * Viscosity of water or steam, Pa s: T in K, rho in kg/m³.
 *
 * The factor that differs from 1 only close to the critical point (647 K, 322 kg/m³) is left out, as the release allows
 * for industrial use. Source: IAPWS R12-08.
 *
 * @example waterViscosity.compute({ T: 298.15, rho: 998 }) // 889.7351e-6 Pa s
 */
export const waterViscosity = property({
  id: "fluids/water/water-viscosity",
  title: "Viscosity of water from its density",
  inputs: { T: { symbol: "T", kind: "temperature" }, rho: { symbol: "rho", kind: "density" } },
  result: { symbol: "mu", kind: "viscosity" },
  name: "mu_water",
  tex: String.raw`\begin{gathered} \frac{\mu(T, \rho)}{\mathrm{\mu Pa\,s}} = \frac{100\sqrt{\bar T}\;e^{\bar\rho\,S}}{\sum_{i=0}^{3} H_i\,\bar T^{-i}} \\ S = \sum_{i=0}^{5}\sum_{j=0}^{6} H_{ij} \left(\frac{1}{\bar T} - 1\right)^{i} (\bar\rho - 1)^j \\ \bar T = \frac{T}{647.096\,\mathrm{K}}, \quad \bar\rho = \frac{\rho}{322\,\mathrm{kg/m^3}} \end{gathered}`,
  sources: [{ key: "iapws-r12-08", where: "equations 10 to 12", standing: "open reference read" }],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: 1173.15,
      says: "The equation for the viscosity of water does not hold at a temperature past the bound.",
    },
    {
      input: "rho",
      from: 0,
      to: 1200,
      says: "The equation for the viscosity of water was not checked at a density past the bound.",
    },
  ],
  accuracy: "1 % for liquid water",
  compute: ({ T, rho }) => {
    const t = critical.T / T;
    const delta = rho / critical.rho;
    const dilute = 100 / Math.sqrt(t) / (1.67752 + t * (2.20462 + t * (0.6366564 - t * 0.241605)));
    return 1e-6 * dilute * Math.exp(delta * exponent(t - 1, delta - 1));
  },
});
