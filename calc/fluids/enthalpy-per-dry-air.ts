import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";
import { enthalpy } from "./enthalpy.ts";

const h_fg0 = constants.h_fg0.value;

/**
 * Enthalpy of moist air as handbooks of air conditioning count it, J per kg of dry air: zero for dry air at 0 °C and for
 * liquid water at 0 °C, so that the vapour brings its heat of evaporation. T in K, w in kg/kg. Ideal gas.
 *
 * @example enthalpyPerDryAir.compute({ T: 298.15, w: 0.02 }) // 76 051 J/kg
 */
export const enthalpyPerDryAir = explicit({
  id: "fluids/enthalpy-per-dry-air",
  title: "Enthalpy of moist air per kilogram of dry air",
  inputs: { T: { symbol: "T", kind: "temperature" }, w: { symbol: "w", kind: "humidityRatio" } },
  result: { symbol: "h_da", kind: "specificEnergy" },
  expression: "(1 + w) * h(T, w) + w * h_fg0",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, enthalpy of moist air from its definition",
      standing: "derived here",
    },
  ],
  accuracy: "0.1 % from 0 to 40 °C",
  compute: ({ T, w }) => (1 + w) * enthalpy.compute({ T, w }) + w * h_fg0,
});
