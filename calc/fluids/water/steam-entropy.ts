import { property } from "../../relation/relation.ts";
import { regionTwo } from "./region-two.ts";
import { refuseWater, steamRanges } from "./steam-ranges.ts";

/**
 * Entropy of steam, J/(kg K), from the liquid at the triple point: T in K, p in Pa absolute.
 * 273.15 to 1073.15 K, to 30 MPa. Throws a DomainError for p where steam of that temperature would be water.
 * Source: IAPWS-IF97, region 2.
 *
 * @example steamEntropy.compute({ T: 300, p: 3500 }) // 8522.38967 J/(kg K)
 */
export const steamEntropy = property({
  id: "fluids/water/steam-entropy",
  title: "Entropy of steam",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "s", kind: "specificHeat" },
  name: "s_steam",
  tex: String.raw`\begin{gathered} s(T, p) = R\,(\tau\,\gamma_\tau - \gamma) \\ \gamma = \ln\pi + \sum_{i=1}^{9} n_i^\circ\,\tau^{J_i^\circ} \\ {} + \sum_{i=1}^{43} n_i\,\pi^{I_i}\,(\tau - 0.5)^{J_i} \\ \pi = \frac{p}{1\,\mathrm{MPa}}, \quad \tau = \frac{540\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 2, table 12", standing: "open reference read" }],
  ranges: steamRanges,
  accuracy: "0.6 J/(kg K)",
  compute: ({ T, p }) => {
    refuseWater(T, p);
    return regionTwo.s(T, p);
  },
});
