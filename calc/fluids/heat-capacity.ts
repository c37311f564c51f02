import { property } from "../relation/relation.ts";
import { moistCp } from "./moist-air.ts";
import { nasaRange } from "./nasa-range.ts";

/**
 * Heat capacity of moist air at constant pressure, J per kg of moist air and K. T in K, w kg of vapour per kg of dry air.
 *
 * Ideal gas: at 300 K the real value is 0.2 % higher at 0.1 MPa and 0.8 % higher at 0.5 MPa, see
 * fluids/heat-capacity-pressure-effect. Source: NASA TM-4513.
 *
 * @example heatCapacity.compute({ T: 300, w: 0 }) // 1004.828 J/(kg K)
 */
export const heatCapacity = property({
  id: "fluids/heat-capacity",
  title: "Heat capacity of moist air",
  inputs: { T: { symbol: "T", kind: "temperature" }, w: { symbol: "w", kind: "humidityRatio" } },
  result: { symbol: "c_p", kind: "specificHeat" },
  name: "c_p",
  tex: String.raw`\begin{gathered} c_p(T, w) = \frac{c_{p,\mathrm{a}}(T) + w\,c_{p,\mathrm{w}}(T)}{1 + w} \\ c_{p,i}(T) = \frac{R_\mathrm{u}}{M_i} \sum_{j=1}^{5} a_{j,i}\,T^{j-1} \end{gathered}`,
  sources: [
    {
      key: "nasa-tm-4513",
      where: "coefficients of N2, O2, Ar, CO2 and H2O",
      standing: "from memory",
    },
  ],
  ranges: [nasaRange],
  accuracy: "0.1 % as an ideal gas",
  compute: ({ T, w }) => moistCp(T, w),
});
