import { property } from "../../relation/relation.ts";
import { atmosphericVolume } from "./atmospheric-series.ts";
import { atmosphericWaterRange } from "./atmospheric-water-range.ts";

/**
 * Density of liquid water at 0.1 MPa, kg/m³, at T in K: 253.15 to 383.15 K. What other pressures change is left out: from
 * 0 to 0.143 MPa, where fluids/water uses it, less than 0.005 %. Source: IAPWS SR6-08(2011).
 *
 * @example atmosphericWaterDensity.compute({ T: 293.15 }) // 998.2065 kg/m³
 */
export const atmosphericWaterDensity = property({
  id: "fluids/water/atmospheric-water-density",
  title: "Density of water near atmospheric pressure",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "rho", kind: "density" },
  name: "rho_atm",
  tex: String.raw`\begin{gathered} \rho(T) = \frac{p_*}{R_*\,T_*\,f(T)} \\ f = a_5 + \sum_{i=6}^{10} a_i\,\alpha^{n_i} + \sum_{i=5}^{10} b_i\,\beta^{m_i} \\ \alpha = \frac{10\,\mathrm{K}}{593\,\mathrm{K} - T}, \quad \beta = \frac{10\,\mathrm{K}}{T - 232\,\mathrm{K}} \end{gathered}`,
  sources: [{ key: "iapws-sr6-08", where: "specific volume, table 1", standing: "open reference read" }],
  ranges: [atmosphericWaterRange],
  accuracy: "0.005 %",
  compute: ({ T }) => 1 / atmosphericVolume(T),
});
