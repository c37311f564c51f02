import { constants } from "../constants.ts";
import { property } from "../relation/relation.ts";

/** Coefficients in cm³/mol of B = b0 + b1/T + b2/T² + b3/T³, T in K. */
const b = [36.3548, -8027.07, -1.871752e6, 9.278212e7] as const;
const perKilogram = 1e-6 / constants.M_a.value;

/** Second derivative of the virial coefficient, m³/(kg K²). */
export const secondVirialCurvature = (T: number) =>
  (perKilogram * (2 * b[1] + (6 * b[2] + (12 * b[3]) / T) / T)) / T ** 3;

/**
 * Second virial coefficient of dry air per kilogram, m³/kg, at T in K: how far air at pressure is from the ideal gas.
 * A fit to the reference equation of air, 250 to 500 K, to 0.006 cm³/mol.
 *
 * @example secondVirial.compute({ T: 300 }) // -2.68e-4 m³/kg
 */
export const secondVirial = property({
  id: "fluids/second-virial",
  title: "Second virial coefficient of air",
  inputs: { T: { symbol: "T", kind: "temperature" } },
  result: { symbol: "B", kind: "specificVolume" },
  name: "B",
  tex: String.raw`\begin{gathered} B(T) = \frac{1}{M_\mathrm{a}}\left(b_0 + \frac{b_1}{T} + \frac{b_2}{T^2} + \frac{b_3}{T^3}\right) \end{gathered}`,
  sources: [
    {
      key: "lemmon-2000",
      where: "fit to the second virial coefficient of the equation of state",
      standing: "derived here",
    },
  ],
  ranges: [
    {
      input: "T",
      from: 250,
      to: 500,
      says: "The real-gas correction was fitted to temperatures within the bound; the same formula is carried on past it.",
    },
  ],
  accuracy: "0.006 cm³/mol",
  compute: ({ T }) => perKilogram * (b[0] + (b[1] + (b[2] + b[3] / T) / T) / T),
});
