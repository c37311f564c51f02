import { property } from "../../relation/relation.ts";
import { regionTwo } from "./region-two.ts";
import { refuseWater, steamRanges } from "./steam-ranges.ts";

/**
 * Enthalpy of steam, J/kg, from the liquid at the triple point: T in K, p in Pa absolute.
 * 273.15 to 1073.15 K, to 30 MPa. Throws a DomainError for p where steam of that temperature would be water.
 * Source: IAPWS-IF97, region 2.
 *
 * @example steamEnthalpy.compute({ T: 300, p: 3500 }) // 2 549 911.45 J/kg
 */
export const steamEnthalpy = property({
  id: "fluids/water/steam-enthalpy",
  title: "Enthalpy of steam",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "h", kind: "specificEnergy" },
  name: "h_steam",
  tex: String.raw`\begin{gathered} h(T, p) = R\,T\,\tau\,\gamma_\tau \\ \gamma = \ln\pi + \sum_{i=1}^{9} n_i^\circ\,\tau^{J_i^\circ} \\ {} + \sum_{i=1}^{43} n_i\,\pi^{I_i}\,(\tau - 0.5)^{J_i} \\ \pi = \frac{p}{1\,\mathrm{MPa}}, \quad \tau = \frac{540\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 2, table 12", standing: "open reference read" }],
  ranges: steamRanges,
  accuracy: "0.2 kJ/kg",
  compute: ({ T, p }) => {
    refuseWater(T, p);
    return regionTwo.h(T, p);
  },
});
