import { property } from "../../relation/relation.ts";
import { regionTwo } from "./region-two.ts";
import { refuseWater, steamRanges } from "./steam-ranges.ts";

/**
 * Heat capacity of steam at constant pressure, J/(kg K): T in K, p in Pa absolute.
 * 273.15 to 1073.15 K, to 30 MPa. Throws a DomainError for p where steam of that temperature would be water.
 * Source: IAPWS-IF97, region 2.
 *
 * @example steamHeatCapacity.compute({ T: 300, p: 3500 }) // 1913.00162 J/(kg K)
 */
export const steamHeatCapacity = property({
  id: "fluids/water/steam-heat-capacity",
  title: "Heat capacity of steam",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "c_p", kind: "specificHeat" },
  name: "c_p_steam",
  tex: String.raw`\begin{gathered} c_p(T, p) = -R\,\tau^2\,\gamma_{\tau\tau} \\ \gamma = \ln\pi + \sum_{i=1}^{9} n_i^\circ\,\tau^{J_i^\circ} \\ {} + \sum_{i=1}^{43} n_i\,\pi^{I_i}\,(\tau - 0.5)^{J_i} \\ \pi = \frac{p}{1\,\mathrm{MPa}}, \quad \tau = \frac{540\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 2, table 12", standing: "open reference read" }],
  ranges: steamRanges,
  accuracy: "1 %",
  compute: ({ T, p }) => {
    refuseWater(T, p);
    return regionTwo.cp(T, p);
  },
});
