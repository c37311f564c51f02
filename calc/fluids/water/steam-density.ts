import { property } from "../../relation/relation.ts";
import { regionTwo } from "./region-two.ts";
import { refuseWater, steamRanges } from "./steam-ranges.ts";

/**
 * Density of steam, kg/m³: T in K, p in Pa absolute.
 * 273.15 to 1073.15 K, to 30 MPa. Throws a DomainError for p where steam of that temperature would be water.
 * Source: IAPWS-IF97, region 2.
 *
 * @example steamDensity.compute({ T: 700, p: 30e6 }) // 184.18 kg/m³
 */
export const steamDensity = property({
  id: "fluids/water/steam-density",
  title: "Density of steam",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "rho", kind: "density" },
  name: "rho_steam",
  tex: String.raw`\begin{gathered} \rho(T, p) = \frac{p}{R\,T\,\pi\,\gamma_\pi} \\ \gamma = \ln\pi + \sum_{i=1}^{9} n_i^\circ\,\tau^{J_i^\circ} \\ {} + \sum_{i=1}^{43} n_i\,\pi^{I_i}\,(\tau - 0.5)^{J_i} \\ \pi = \frac{p}{1\,\mathrm{MPa}}, \quad \tau = \frac{540\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 2, table 12", standing: "open reference read" }],
  ranges: steamRanges,
  accuracy: "0.1 %",
  compute: ({ T, p }) => {
    refuseWater(T, p);
    return 1 / regionTwo.v(T, p);
  },
});
