import { property } from "../../relation/relation.ts";
import { atmosphericWaterRange } from "./atmospheric-water-range.ts";

/**
 * Thermal conductivity of liquid water at 0.1 MPa, W/(m K), at T in K: 253.15 to 383.15 K. Source: IAPWS SR6-08(2011).
 *
 * @example atmosphericWaterConductivity.compute({ T: 293.15 }) // 0.598005 W/(m K)
 */
export const atmosphericWaterConductivity = property({
  id: "fluids/water/atmospheric-water-conductivity",
  title: "Thermal conductivity of water near atmospheric pressure",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "k", kind: "conductivity" },
  name: "k_atm",
  tex: String.raw`\begin{gathered} \frac{k(T)}{\mathrm{W/(m\,K)}} = 1.6630\,\theta^{-1.15} - 1.7781\,\theta^{-3.4} \\ {} + 1.1567\,\theta^{-6} - 0.432115\,\theta^{-7.6} \\ \theta = \frac{T}{300\,\mathrm{K}} \end{gathered}`,
  sources: [{ key: "iapws-sr6-08", where: "thermal conductivity", standing: "open reference read" }],
  ranges: [atmosphericWaterRange],
  accuracy: "1.5 %",
  compute: ({ T }) => {
    const x = T / 300;
    return 1.663 * x ** -1.15 - 1.7781 * x ** -3.4 + 1.1567 * x ** -6 - 0.432115 * x ** -7.6;
  },
});
