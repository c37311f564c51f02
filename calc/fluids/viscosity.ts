import { property } from "../relation/relation.ts";
import { diluteViscosity } from "./dilute-air.ts";

/**
 * Viscosity of dry air at low pressure, Pa s, at T in K. Up to 0.6 MPa and above 280 K density adds less than 0.5 %;
 * fluids/viscosity-density-effect says how much. Source: Lemmon and Jacobsen 2004, dilute-gas part.
 *
 * @example viscosity.compute({ T: 300 }) // 18.523e-6 Pa s
 */
export const viscosity = property({
  id: "fluids/viscosity",
  title: "Viscosity of air",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "mu", kind: "viscosity" },
  name: "mu",
  tex: String.raw`\begin{gathered} \mu(T) = \frac{0.0266958\sqrt{28.9586\,T}}{0.360^2\,\Omega(T)}\ \mathrm{\mu Pa\,s} \\ \ln\Omega = \sum_{i=0}^{4} b_i \left(\ln\frac{T}{103.3\,\mathrm{K}}\right)^{i} \end{gathered}`,
  sources: [
    {
      key: "lemmon-jacobsen-2004",
      where: "viscosity of the dilute gas",
      standing: "open reference read",
    },
  ],
  ranges: [
    {
      input: "T",
      from: 100,
      to: 1000,
      says: "The viscosity of air was not checked at a temperature past the bound.",
    },
  ],
  accuracy: "1 to 2 %",
  compute: ({ T }) => diluteViscosity(T),
});
