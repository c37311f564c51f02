import { constants } from "../../constants.ts";
import { type PowerTerm, powerSum } from "../../numerics/power-sum.ts";
import { property } from "../../relation/relation.ts";

// IAPWS-IF97, table 8: exponents of π and of σ + 2, and the coefficient.
const terms: readonly PowerTerm[] = [
  [0, 0, 0.17478268058307e3],
  [0, 1, 0.34806930892873e2],
  [0, 2, 0.65292584978455e1],
  [0, 3, 0.33039981775489],
  [0, 11, -0.19281382923196e-6],
  [0, 31, -0.24909197244573e-22],
  [1, 0, -0.26107636489332],
  [1, 1, 0.22592965981586],
  [1, 2, -0.64256463395226e-1],
  [1, 3, 0.78876289270526e-2],
  [1, 12, 0.35672110607366e-9],
  [1, 31, 0.17332496994895e-23],
  [2, 0, 0.56608900654837e-3],
  [2, 1, -0.32635483139717e-3],
  [2, 2, 0.44778286690632e-4],
  [2, 9, -0.51322156908507e-9],
  [2, 31, -0.42522657042207e-25],
  [3, 10, 0.26400441360689e-12],
  [3, 32, 0.78124600459723e-28],
  [4, 32, -0.30732199903668e-30],
];
const sum = powerSum(terms);

/**
 * Temperature of liquid water in K from its entropy in J/(kg K) and its pressure in Pa absolute, within 0.025 K of what
 * fluids/water/compressed-water-entropy says: what a pump without loss would make of it. Source: IAPWS-IF97, equation 13.
 *
 * @example temperatureFromEntropy.compute({ p: 3e6, s: 500 }) // 307.842258 K
 */
export const temperatureFromEntropy = property({
  id: "fluids/water/temperature-from-entropy",
  title: "Temperature of water from its entropy",
  inputs: { p: { symbol: "p", kind: "pressure" }, s: { symbol: "s", kind: "specificHeat" } },
  result: { symbol: "T", kind: "temperature" },
  name: "T_of_s",
  tex: String.raw`\begin{gathered} \frac{T(p, s)}{\mathrm{K}} = \sum_{i=1}^{20} n_i\,\pi^{I_i}\,(\sigma + 2)^{J_i} \\ \pi = \frac{p}{1\,\mathrm{MPa}}, \quad \sigma = \frac{s}{1\,\mathrm{kJ/(kg\,K)}} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "equation 13, table 8", standing: "open reference read" }],
  ranges: [
    {
      input: "p",
      from: constants.p_t.value,
      to: 100e6,
      says: "The equation from entropy to temperature does not hold at a pressure past the bound.",
    },
    {
      input: "s",
      from: 0,
      to: 3778,
      says: "The equation from entropy to temperature is for liquid water, and holds up to the bound only.",
    },
  ],
  accuracy: "0.025 K",
  compute: ({ p, s }) => sum(p / 1e6, s / 1000 + 2),
});
