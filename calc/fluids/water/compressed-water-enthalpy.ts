import { property } from "../../relation/relation.ts";
import { compressedWaterRanges } from "./compressed-water-ranges.ts";
import { regionOne } from "./region-one.ts";

/**
 * Enthalpy of liquid water, J/kg: T in K, p in Pa absolute. The internal energy of the liquid is zero at the triple
 * point. 273.15 to 623.15 K, from saturation to 100 MPa. Source: IAPWS-IF97, region 1.
 *
 * @example compressedWaterEnthalpy.compute({ T: 300, p: 3e6 }) // 115 331.273 J/kg
 */
export const compressedWaterEnthalpy = property({
  id: "fluids/water/compressed-water-enthalpy",
  title: "Enthalpy of water under pressure",
  inputs: { T: { symbol: "T", kind: "temperature" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "h", kind: "specificEnergy" },
  name: "h_if97",
  tex: String.raw`\begin{gathered} h(T, p) = R\,T\,\tau\,\gamma_\tau \\ \gamma = \sum_{i=1}^{34} n_i\,(7.1 - \pi)^{I_i}\,(\tau - 1.222)^{J_i} \\ \pi = \frac{p}{16.53\,\mathrm{MPa}}, \quad \tau = \frac{1386\,\mathrm{K}}{T} \end{gathered}`,
  sources: [{ key: "iapws-if97", where: "region 1, table 3", standing: "open reference read" }],
  ranges: compressedWaterRanges,
  accuracy: "0.2 kJ/kg",
  compute: ({ T, p }) => regionOne.h(T, p),
});
