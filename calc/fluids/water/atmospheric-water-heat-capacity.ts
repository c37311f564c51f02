import { property } from "../../relation/relation.ts";
import { atmosphericHeatCapacity } from "./atmospheric-series.ts";
import { atmosphericWaterRange } from "./atmospheric-water-range.ts";

/**
 * Heat capacity of liquid water at constant pressure, 0.1 MPa, J/(kg K), at T in K: 253.15 to 383.15 K.
 * Source: IAPWS SR6-08(2011).
 *
 * @example atmosphericWaterHeatCapacity.compute({ T: 293.15 }) // 4184.189 J/(kg K)
 */
export const atmosphericWaterHeatCapacity = property({
  id: "fluids/water/atmospheric-water-heat-capacity",
  title: "Heat capacity of water near atmospheric pressure",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "c_p", kind: "specificHeat" },
  name: "c_p_atm",
  tex: String.raw`\begin{gathered} c_p(T) = -R_*\,(c_3 + \tau A + \tau B) \\ A = \sum_{i=1}^{3} n_i (n_i + 1)\,a_i\,\alpha^{n_i + 2} \\ B = \sum_{i=1}^{4} m_i (m_i + 1)\,b_i\,\beta^{m_i + 2} \\ \tau = \frac{T}{10\,\mathrm{K}} \\ \alpha = \frac{10\,\mathrm{K}}{593\,\mathrm{K} - T}, \quad \beta = \frac{10\,\mathrm{K}}{T - 232\,\mathrm{K}} \end{gathered}`,
  sources: [{ key: "iapws-sr6-08", where: "heat capacity, table 1", standing: "open reference read" }],
  ranges: [atmosphericWaterRange],
  accuracy: "0.1 %",
  compute: ({ T }) => atmosphericHeatCapacity(T),
});
