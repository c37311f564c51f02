import { property } from "../../relation/relation.ts";
import { atmosphericWaterRange } from "./atmospheric-water-range.ts";

/**
 * Viscosity of liquid water at 0.1 MPa, Pa s, at T in K: 253.15 to 383.15 K. Source: IAPWS SR6-08(2011).
 *
 * @example atmosphericWaterViscosity.compute({ T: 293.15 }) // 1001.567e-6 Pa s
 */
export const atmosphericWaterViscosity = property({
  id: "fluids/water/atmospheric-water-viscosity",
  title: "Viscosity of water near atmospheric pressure",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "mu", kind: "viscosity" },
  name: "mu_atm",
  tex: String.raw`\begin{gathered} \frac{\mu(T)}{\mathrm{\mu Pa\,s}} = 280.68\,\theta^{-1.9} + 511.45\,\theta^{-7.7} \\ {} + 61.131\,\theta^{-19.6} + 0.45903\,\theta^{-40} \\ \theta = \frac{T}{300\,\mathrm{K}} \end{gathered}`,
  sources: [{ key: "iapws-sr6-08", where: "viscosity", standing: "open reference read" }],
  ranges: [atmosphericWaterRange],
  accuracy: "1 %",
  compute: ({ T }) => {
    const x = T / 300;
    return 1e-6 * (280.68 * x ** -1.9 + 511.45 * x ** -7.7 + 61.131 * x ** -19.6 + 0.45903 * x ** -40);
  },
});
