import { property } from "../../relation/relation.ts";
import { atmosphericEnthalpy } from "./atmospheric-series.ts";
import { atmosphericWaterRange } from "./atmospheric-water-range.ts";

/**
 * Enthalpy of liquid water at 0.1 MPa, J/kg, at T in K: 253.15 to 383.15 K. It counts as the IAPWS does: the internal
 * energy of the liquid is zero at the triple point, 0.01 °C. The enthalpy of the air counts from another zero, so only
 * differences of the two go together. Source: IAPWS SR6-08(2011).
 *
 * @example atmosphericWaterEnthalpy.compute({ T: 298.15 }) // 104 919.36 J/kg
 */
export const atmosphericWaterEnthalpy = property({
  id: "fluids/water/atmospheric-water-enthalpy",
  title: "Enthalpy of water near atmospheric pressure",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "h", kind: "specificEnergy" },
  name: "h_atm",
  tex: String.raw`\begin{gathered} h(T) = 10\,\mathrm{K}\;R_*\,(c_1 - c_3\,\tau + A + B) \\ A = \sum_{i=1}^{3} a_i\,\alpha^{n_i}\,(1 - n_i\,\tau\alpha) \\ B = \sum_{i=1}^{4} b_i\,\beta^{m_i}\,(1 + m_i\,\tau\beta) \\ \tau = \frac{T}{10\,\mathrm{K}} \\ \alpha = \frac{10\,\mathrm{K}}{593\,\mathrm{K} - T}, \quad \beta = \frac{10\,\mathrm{K}}{T - 232\,\mathrm{K}} \end{gathered}`,
  sources: [
    {
      key: "iapws-sr6-08",
      where: "Gibbs energy and entropy, table 1, put together",
      standing: "open reference read",
    },
  ],
  ranges: [atmosphericWaterRange],
  accuracy: "0.1 % of a difference",
  compute: ({ T }) => atmosphericEnthalpy(T),
});
