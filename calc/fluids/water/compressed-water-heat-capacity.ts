import { property } from "../../relation/relation.ts";
import { compressedWaterRanges } from "./compressed-water-ranges.ts";
import { regionOne } from "./region-one.ts";

/**
 * Heat capacity of liquid water at constant pressure, J/(kg K): T in K, p in Pa absolute.
 * 273.15 to 623.15 K, from the saturation pressure to 100 MPa. Source: IAPWS-IF97, region 1.
 *
 * @example compressedWaterHeatCapacity.compute({ T: 300, p: 3e6 }) // 4173.01218 J/(kg K)
 */
export const compressedWaterHeatCapacity = property({
  id: "fluids/water/compressed-water-heat-capacity",
  title: "Heat capacity of water under pressure",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "c_p", kind: "specificHeat" },
  name: "c_p_if97",
  tex: String.raw`\begin{gathered} c_p(T, p) = -R\,\tau^2\,\gamma_{\tau\tau} \\ \gamma = \sum_{i=1}^{34} n_i\,(7.1 - \pi)^{I_i}\,(\tau - 1.222)^{J_i} \\ \pi = \frac{p}{16.53\,\mathrm{MPa}}, \quad \tau = \frac{1386\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 1, table 3", standing: "open reference read" }],
  ranges: compressedWaterRanges,
  accuracy: "0.1 %",
  compute: ({ T, p }) => regionOne.cp(T, p),
});
