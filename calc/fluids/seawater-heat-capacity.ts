import { property } from "../relation/relation.ts";

/**
 * Heat capacity of seawater at constant pressure near atmospheric pressure, J/(kg K): T in K, S kg of salt per kg of
 * seawater. 0 to 120 °C, 0 to 0.12 kg/kg.
 *
 * The correlation was made for an older scale of temperature; 120 °C there is 0.03 K off, which changes nothing here.
 * A pressure of 1 MPa lowers the heat capacity by 0.1 %. Brine of 0.12 kg/kg near 0 °C differs by 0.5 % from the
 * formulation of the IAPWS. Source: Sharqawy, Lienhard and Zubair 2010, equation 9.
 *
 * @example seawaterHeatCapacity.compute({ T: 298.15, S: 0.035 }) // 4000.77 J/(kg K)
 */
export const seawaterHeatCapacity = property({
  id: "fluids/seawater-heat-capacity",
  title: "Heat capacity of seawater",
  inputs: { T: { symbol: "T", kind: "temperature" }, S: { symbol: "S", kind: "fraction" } },
  result: { symbol: "c_p", kind: "specificHeat" },
  name: "c_p_sea",
  tex: String.raw`\begin{gathered} \frac{c_p(T, S)}{\mathrm{kJ/(kg\,K)}} = A + B\,\theta + C\,\theta^2 + D\,\theta^3 \\ A = 5.328 - 9.76 \times 10^{-2}\,\sigma \\ {} + 4.04 \times 10^{-4}\,\sigma^2 \\ B = -6.913 \times 10^{-3} + 7.351 \times 10^{-4}\,\sigma \\ {} - 3.15 \times 10^{-6}\,\sigma^2 \\ C = 9.6 \times 10^{-6} - 1.927 \times 10^{-6}\,\sigma \\ {} + 8.23 \times 10^{-9}\,\sigma^2 \\ D = 2.5 \times 10^{-9} + 1.666 \times 10^{-9}\,\sigma \\ {} - 7.125 \times 10^{-12}\,\sigma^2 \\ \theta = T/\mathrm{K}, \quad \sigma = 1000\,S \end{gathered}`,
  sources: [{ key: "sharqawy-2010", where: "equation 9, heat capacity", standing: "from memory" }],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: 393.15,
      says: "The heat capacity of seawater was not measured at a temperature past the bound; the same formula is carried on.",
    },
    {
      input: "S",
      from: 0,
      to: 0.12,
      says: "The heat capacity of seawater was not measured at a salinity past the bound; the same formula is carried on.",
    },
  ],
  accuracy: "0.3 %",
  compute: ({ T, S }) => {
    const s = 1000 * S;
    const A = 5.328 + s * (-9.76e-2 + s * 4.04e-4);
    const B = -6.913e-3 + s * (7.351e-4 - s * 3.15e-6);
    const C = 9.6e-6 + s * (-1.927e-6 + s * 8.23e-9);
    const D = 2.5e-9 + s * (1.666e-9 - s * 7.125e-12);
    return 1000 * (A + T * (B + T * (C + T * D)));
  },
});
