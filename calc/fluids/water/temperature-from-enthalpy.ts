import { constants } from "../../constants.ts";
import { type PowerTerm, powerSum } from "../../numerics/power-sum.ts";
import { property } from "../../relation/relation.ts";

// IAPWS-IF97, table 6: exponents of π and of η + 1, and the coefficient.
const terms: readonly PowerTerm[] = [
  [0, 0, -0.23872489924521e3],
  [0, 1, 0.40421188637945e3],
  [0, 2, 0.11349746881718e3],
  [0, 6, -0.58457616048039e1],
  [0, 22, -0.1528548241314e-3],
  [0, 32, -0.10866707695377e-5],
  [1, 0, -0.13391744872602e2],
  [1, 1, 0.43211039183559e2],
  [1, 2, -0.54010067170506e2],
  [1, 3, 0.30535892203916e2],
  [1, 4, -0.65964749423638e1],
  [1, 10, 0.93965400878363e-2],
  [1, 32, 0.1157364750534e-6],
  [2, 10, -0.25858641282073e-4],
  [2, 32, -0.40644363084799e-8],
  [3, 10, 0.66456186191635e-7],
  [3, 32, 0.80670734103027e-10],
  [4, 32, -0.93477771213947e-12],
  [5, 32, 0.58265442020601e-14],
  [6, 32, -0.15020185953503e-16],
];
const sum = powerSum(terms);

/**
 * Temperature of liquid water in K from its enthalpy in J/kg and its pressure in Pa absolute, within 0.025 K of what
 * fluids/water/compressed-water-enthalpy says, without a search. Source: IAPWS-IF97, equation 11.
 *
 * @example temperatureFromEnthalpy.compute({ p: 3e6, h: 500e3 }) // 391.798509 K
 */
export const temperatureFromEnthalpy = property({
  id: "fluids/water/temperature-from-enthalpy",
  title: "Temperature of water from its enthalpy",
  inputs: { p: { symbol: "p", kind: "pressure" }, h: { symbol: "h", kind: "specificEnergy" } },
  result: { symbol: "T", kind: "temperature" },
  name: "T_of_h",
  tex: String.raw`\begin{gathered} \frac{T(p, h)}{\mathrm{K}} = \sum_{i=1}^{20} n_i\,\pi^{I_i}\,(\eta + 1)^{J_i} \\ \pi = \frac{p}{1\,\mathrm{MPa}}, \quad \eta = \frac{h}{2500\,\mathrm{kJ/kg}} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "equation 11, table 6", standing: "open reference read" }],
  ranges: [
    {
      input: "p",
      from: constants.p_t.value,
      to: 100e6,
      says: "The equation from enthalpy to temperature does not hold at a pressure past the bound.",
    },
    {
      input: "h",
      from: 0,
      to: 1.67e6,
      says: "The equation from enthalpy to temperature is for liquid water, and holds up to the bound only.",
    },
  ],
  accuracy: "0.025 K",
  compute: ({ p, h }) => sum(p / 1e6, h / 2.5e6 + 1),
});
