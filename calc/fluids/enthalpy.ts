import { property } from "../relation/relation.ts";
import { moistH } from "./moist-air.ts";
import { nasaRange } from "./nasa-range.ts";

/**
 * Enthalpy of moist air, J per kg of moist air: zero at 0 °C for dry air and for vapour alike, so that it is about the
 * heat capacity times the Celsius temperature. T in K, w kg/kg. Ideal gas. Source: NASA TM-4513, integrated.
 *
 * @example enthalpy.compute({ T: 373.15, w: 0 }) // 100 667 J/kg
 */
export const enthalpy = property({
  id: "fluids/enthalpy",
  title: "Enthalpy of moist air",
  inputs: { T: { symbol: "T", kind: "temperature" }, w: { symbol: "w", kind: "humidityRatio" } },
  result: { symbol: "h", kind: "specificEnergy" },
  name: "h",
  tex: String.raw`h(T, w) = \int_{T_{0\,^\circ\mathrm{C}}}^{T} c_p(T', w)\,\mathrm{d}T'`,
  sources: [
    {
      key: "nasa-tm-4513",
      where: "coefficients of N2, O2, Ar, CO2 and H2O",
      standing: "from memory",
    },
  ],
  ranges: [nasaRange],
  accuracy: "0.1 % as an ideal gas",
  compute: ({ T, w }) => moistH(T, w),
});
