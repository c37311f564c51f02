import { constants } from "../constants.ts";
import { gaussLegendre } from "../numerics/gauss-legendre.ts";
import { property } from "../relation/relation.ts";
import { seawaterDensity } from "./seawater-density.ts";
import { seawaterHeatCapacity } from "./seawater-heat-capacity.ts";

/** Exact for the third power of the temperature, in which the heat capacity ends. */
const rule = gaussLegendre(2);

/**
 * Enthalpy of seawater in J/kg at T in K, of absolute salinity S in kg/kg, at p in Pa absolute: its heat of mixing at 0 °C, its heat
 * capacity added up from there, and what the pressure above one atmosphere puts in.
 *
 * Zero is standard seawater, of 35.16504 g/kg, at 0 °C under one atmosphere. 0 to 60 °C and to 42 g/kg, within 0.2 % or 0.15 kJ/kg.
 *
 * @example seawaterEnthalpy.compute({ T: 288.15, S: 0.035, p: 101325 }) // 59909 J/kg
 */
export const seawaterEnthalpy = property({
  id: "fluids/seawater-enthalpy",
  title: "Enthalpy of seawater",
  inputs: {
    T: { symbol: "T", kind: "temperature" },
    S: { symbol: "S", kind: "fraction" },
    p: { symbol: "p", kind: "pressure" },
  },
  result: { symbol: "h", kind: "specificEnergy" },
  name: "h_sea",
  tex: String.raw`\begin{gathered} h = h_0 + \int_{273.15\,\mathrm{K}}^{T} c_p(\theta, S)\,\mathrm{d}\theta \\ {} + \frac{p - 1\,\mathrm{atm}}{\rho(T, S, p)} \\ \frac{h_0}{\mathrm{J/kg}} = 57.06 + 11485\,S \\ {} + 30711\,S^{3/2} - 536040\,S^2 \end{gathered}`,
  sources: [
    {
      key: "sharqawy-2010",
      where: "equation 9, heat capacity, added up over the temperature",
      standing: "derived here",
    },
    {
      key: "iapws-r13-08",
      where: "enthalpy at 0 °C and one atmosphere, fitted here within 3 J/kg",
      standing: "derived here",
    },
  ],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: 333.15,
      says: "The enthalpy of seawater was compared with newer formulas from 0 °C to that of a hot drain only, and this is past the bound.",
    },
    {
      input: "S",
      from: 0,
      to: 0.042,
      says: "The enthalpy of seawater was compared with newer formulas up to the salinity of warm enclosed seas, and this is past the bound.",
    },
  ],
  accuracy: "0.2 %, or 0.15 kJ/kg where that is more",
  compute: ({ T, S, p }) => {
    const T_0 = constants.T_C.value;
    const c_m = rule.nodes.reduce(
      (sum, at, i) =>
        sum + (rule.weights[i] ?? 0) * seawaterHeatCapacity.compute({ T: T_0 + at * (T - T_0), S }),
      0,
    );
    const h_0 = 57.06 + 11_485 * S + 30_711 * S ** 1.5 - 536_040 * S ** 2;
    return h_0 + c_m * (T - T_0) + (p - constants.p_sl.value) / seawaterDensity.compute({ T, S, p });
  },
});
