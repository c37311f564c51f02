import { type PowerTerm, powerSum } from "../../numerics/power-sum.ts";
import { property } from "../../relation/relation.ts";
import { critical } from "./water-constants.ts";

// IAPWS R15-11, table 2: exponents of 1/T̄ - 1 and of ρ̄ - 1, and the coefficient.
const terms: readonly PowerTerm[] = [
  [0, 0, 1.60397357],
  [0, 1, -0.646013523],
  [0, 2, 0.111443906],
  [0, 3, 0.102997357],
  [0, 4, -0.0504123634],
  [0, 5, 0.00609859258],
  [1, 0, 2.33771842],
  [1, 1, -2.78843778],
  [1, 2, 1.53616167],
  [1, 3, -0.463045512],
  [1, 4, 0.0832827019],
  [1, 5, -0.00719201245],
  [2, 0, 2.19650529],
  [2, 1, -4.54580785],
  [2, 2, 3.55777244],
  [2, 3, -1.40944978],
  [2, 4, 0.275418278],
  [2, 5, -0.0205938816],
  [3, 0, -1.21051378],
  [3, 1, 1.60812989],
  [3, 2, -0.621178141],
  [3, 3, 0.0716373224],
  [4, 0, -2.720337],
  [4, 1, 4.57586331],
  [4, 2, -3.18369245],
  [4, 3, 1.1168348],
  [4, 4, -0.19268305],
  [4, 5, 0.012913842],
];
const exponent = powerSum(terms);

/**
 * Thermal conductivity of water or steam, W/(m K), without the part that grows near the critical point: T in K, rho in
 * kg/m³. In liquid water up to 450 K that part is under 0.2 %; fluids/water/compressed-water-conductivity has it.
 * Source: IAPWS R15-11.
 *
 * @example waterConductivity.compute({ T: 298.15, rho: 998 }) // 0.607712868 W/(m K)
 */
export const waterConductivity = property({
  id: "fluids/water/water-conductivity",
  title: "Thermal conductivity of water from its density, away from the critical point",
  inputs: { T: { symbol: "T", kind: "temperature" }, rho: { symbol: "rho", kind: "density" } },
  result: { symbol: "k", kind: "conductivity" },
  name: "k_water",
  tex: String.raw`\begin{gathered} \frac{k(T, \rho)}{\mathrm{mW/(m\,K)}} = \frac{\sqrt{\bar T}\;e^{\bar\rho\,S}}{\sum_{i=0}^{4} L_i\,\bar T^{-i}} \\ S = \sum_{i=0}^{4}\sum_{j=0}^{5} L_{ij} \left(\frac{1}{\bar T} - 1\right)^{i} (\bar\rho - 1)^j \\ \bar T = \frac{T}{647.096\,\mathrm{K}}, \quad \bar\rho = \frac{\rho}{322\,\mathrm{kg/m^3}} \end{gathered}`,
  sources: [{ key: "iapws-r15-11", where: "equations 15 to 17", standing: "open reference read" }],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: 873.15,
      says: "The equation for the thermal conductivity of water was not checked at a temperature past the bound.",
    },
    {
      input: "rho",
      from: 0,
      to: 1200,
      says: "The equation for the thermal conductivity of water was not checked at a density past the bound.",
    },
  ],
  accuracy: "1.5 % for liquid water",
  compute: ({ T, rho }) => {
    const t = critical.T / T;
    const delta = rho / critical.rho;
    const dilute =
      1 /
      Math.sqrt(t) /
      (2.443221e-3 + t * (1.323095e-2 + t * (6.770357e-3 + t * (-3.454586e-3 + t * 4.096266e-4))));
    return 1e-3 * dilute * Math.exp(delta * exponent(t - 1, delta - 1));
  },
});
