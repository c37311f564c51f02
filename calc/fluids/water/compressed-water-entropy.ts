import { property } from "../../relation/relation.ts";
import { compressedWaterRanges } from "./compressed-water-ranges.ts";
import { regionOne } from "./region-one.ts";

/**
 * Entropy of liquid water, J/(kg K): T in K, p in Pa absolute. Zero for the liquid at the triple point.
 * 273.15 to 623.15 K, from the saturation pressure to 100 MPa. Source: IAPWS-IF97, region 1.
 *
 * @example compressedWaterEntropy.compute({ T: 300, p: 3e6 }) // 392.294792 J/(kg K)
 */
export const compressedWaterEntropy = property({
  id: "fluids/water/compressed-water-entropy",
  title: "Entropy of water",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "s", kind: "specificHeat" },
  name: "s_if97",
  tex: String.raw`\begin{gathered} s(T, p) = R\,(\tau\,\gamma_\tau - \gamma) \\ \gamma = \sum_{i=1}^{34} n_i\,(7.1 - \pi)^{I_i}\,(\tau - 1.222)^{J_i} \\ \pi = \frac{p}{16.53\,\mathrm{MPa}}, \quad \tau = \frac{1386\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 1, table 3", standing: "open reference read" }],
  ranges: compressedWaterRanges,
  accuracy: "0.6 J/(kg K)",
  compute: ({ T, p }) => regionOne.s(T, p),
});
