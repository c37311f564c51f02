import { property } from "../../relation/relation.ts";
import { speedOfSound } from "./phase.ts";
import { regionTwo } from "./region-two.ts";
import { refuseWater, steamRanges } from "./steam-ranges.ts";

/**
 * Speed of sound in steam, m/s: T in K, p in Pa absolute.
 * 273.15 to 1073.15 K, to 30 MPa. Throws a DomainError for p where steam of that temperature would be water.
 * Source: IAPWS-IF97, region 2.
 *
 * @example steamSpeedOfSound.compute({ T: 300, p: 3500 }) // 427.920172 m/s
 */
export const steamSpeedOfSound = property({
  id: "fluids/water/steam-speed-of-sound",
  title: "Speed of sound in steam",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "a", kind: "speed" },
  name: "a_steam",
  tex: String.raw`\begin{gathered} \frac{a^2}{R\,T} = \frac{\gamma_\pi^2}{\dfrac{(\gamma_\pi - \tau\gamma_{\pi\tau})^2}{\tau^2\,\gamma_{\tau\tau}} - \gamma_{\pi\pi}} \\ \gamma = \ln\pi + \sum_{i=1}^{9} n_i^\circ\,\tau^{J_i^\circ} \\ {} + \sum_{i=1}^{43} n_i\,\pi^{I_i}\,(\tau - 0.5)^{J_i} \\ \pi = \frac{p}{1\,\mathrm{MPa}}, \quad \tau = \frac{540\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 2, table 12", standing: "open reference read" }],
  ranges: steamRanges,
  accuracy: "1 %",
  compute: ({ T, p }) => {
    refuseWater(T, p);
    return speedOfSound(regionTwo, T, p);
  },
});
