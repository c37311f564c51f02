import { property } from "../../relation/relation.ts";
import { compressedWaterRanges } from "./compressed-water-ranges.ts";
import { speedOfSound } from "./phase.ts";
import { regionOne } from "./region-one.ts";

/**
 * Speed of sound in liquid water, m/s: T in K, p in Pa absolute.
 * 273.15 to 623.15 K, from the saturation pressure to 100 MPa. Source: IAPWS-IF97, region 1.
 *
 * @example compressedWaterSpeedOfSound.compute({ T: 300, p: 3e6 }) // 1507.73921 m/s
 */
export const compressedWaterSpeedOfSound = property({
  id: "fluids/water/compressed-water-speed-of-sound",
  title: "Speed of sound in water",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "a", kind: "speed" },
  name: "a_if97",
  tex: String.raw`\begin{gathered} \frac{a^2}{R\,T} = \frac{\gamma_\pi^2}{\dfrac{(\gamma_\pi - \tau\gamma_{\pi\tau})^2}{\tau^2\,\gamma_{\tau\tau}} - \gamma_{\pi\pi}} \\ \gamma = \sum_{i=1}^{34} n_i\,(7.1 - \pi)^{I_i}\,(\tau - 1.222)^{J_i} \\ \pi = \frac{p}{16.53\,\mathrm{MPa}}, \quad \tau = \frac{1386\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 1, table 3", standing: "open reference read" }],
  ranges: compressedWaterRanges,
  accuracy: "0.2 %",
  compute: ({ T, p }) => speedOfSound(regionOne, T, p),
});
