import { property } from "../relation/relation.ts";
import { moistS } from "./moist-air.ts";
import { nasaRange } from "./nasa-range.ts";

/**
 * The part of the entropy of moist air that depends on temperature alone, J per kg of moist air and K, zero at 0 °C.
 * T in K, w kg/kg. Ideal gas. Source: NASA TM-4513, integrated.
 *
 * @example temperatureEntropy.compute({ T: 400, w: 0 }) // about 384 J/(kg K)
 */
export const temperatureEntropy = property({
  id: "fluids/temperature-entropy",
  title: "Temperature part of the entropy of moist air",
  inputs: { T: { symbol: "T", kind: "temperature" }, w: { symbol: "w", kind: "humidityRatio" } },
  result: { symbol: "s_o", kind: "specificHeat" },
  name: "s_o",
  tex: String.raw`s^\circ(T, w) = \int_{T_{0\,^\circ\mathrm{C}}}^{T} \frac{c_p(T', w)}{T'}\,\mathrm{d}T'`,
  sources: [
    {
      key: "nasa-tm-4513",
      where: "coefficients of N2, O2, Ar, CO2 and H2O",
      standing: "from memory",
    },
  ],
  ranges: [nasaRange],
  accuracy: "0.1 % as an ideal gas",
  compute: ({ T, w }) => moistS(T, w),
});
