import { property } from "../../relation/relation.ts";
import { compressedWaterRanges } from "./compressed-water-ranges.ts";
import { regionOne } from "./region-one.ts";

/**
 * Density of liquid water, kg/m³: T in K, p in Pa absolute.
 * 273.15 to 623.15 K, from the saturation pressure to 100 MPa. Source: IAPWS-IF97, region 1.
 *
 * @example compressedWaterDensity.compute({ T: 300, p: 3e6 }) // 997.853 kg/m³
 */
export const compressedWaterDensity = property({
  id: "fluids/water/compressed-water-density",
  title: "Density of water under pressure",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "rho", kind: "density" },
  name: "rho_if97",
  tex: String.raw`\begin{gathered} \rho(T, p) = \frac{p}{R\,T\,\pi\,\gamma_\pi} \\ \gamma = \sum_{i=1}^{34} n_i\,(7.1 - \pi)^{I_i}\,(\tau - 1.222)^{J_i} \\ \pi = \frac{p}{16.53\,\mathrm{MPa}}, \quad \tau = \frac{1386\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 1, table 3", standing: "open reference read" }],
  ranges: compressedWaterRanges,
  accuracy: "0.02 %",
  compute: ({ T, p }) => 1 / regionOne.v(T, p),
});
