import { property } from "../relation/relation.ts";
import { diluteViscosity, T_CRITICAL } from "./dilute-air.ts";

/**
 * Thermal conductivity of dry air at low pressure, W/(m K), at T in K. Up to 0.6 MPa and above 280 K density adds less
 * than 0.8 %; fluids/conductivity-density-effect says how much. Source: Lemmon and Jacobsen 2004, dilute-gas part.
 *
 * @example conductivity.compute({ T: 300 }) // 0.0263529 W/(m K)
 */
export const conductivity = property({
  id: "fluids/conductivity",
  title: "Thermal conductivity of air",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "k", kind: "conductivity" },
  name: "k",
  tex: String.raw`\begin{gathered} \frac{k(T)}{\mathrm{mW/(m\,K)}} = 1.308\,\frac{\mu(T)}{\mathrm{\mu Pa\,s}} \\ {} + 1.405\,\tau^{-1.1} - 1.036\,\tau^{-0.3} \\ \tau = \frac{132.6312\,\mathrm{K}}{T} \end{gathered}`,
  sources: [
    { key: "lemmon-jacobsen-2004", where: "conductivity of the dilute gas", standing: "open reference read" },
  ],
  ranges: [
    {
      input: "T",
      from: 100,
      to: 1000,
      says: "The conductivity of air was not checked at a temperature past the bound.",
    },
  ],
  accuracy: "2 %",
  compute: ({ T }) => {
    const tau = T_CRITICAL / T;
    return (1.308 * diluteViscosity(T) * 1e6 + 1.405 * tau ** -1.1 - 1.036 * tau ** -0.3) / 1000;
  },
});
