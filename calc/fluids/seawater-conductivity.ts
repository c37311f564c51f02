import { constants } from "../constants.ts";
import { property } from "../relation/relation.ts";

/** Absolute salinity over the salinity of the formula, both in g/kg, as its transcriptions round it. */
const OLDER_SALT = 1.00472;

/**
 * Thermal conductivity in W/(m K) of seawater at T in K, of absolute salinity S in kg/kg. 0 to 180 °C, 0 to 0.16 kg/kg; within
 * 3 %, as is its difference from newer formulations near 0 °C.
 *
 * @example seawaterConductivity.compute({ T: 293.15, S: 0.035 }) // 0.60163 W/(m K)
 */
export const seawaterConductivity = property({
  id: "fluids/seawater-conductivity",
  title: "Thermal conductivity of seawater",
  inputs: { T: { symbol: "T", kind: "temperature" }, S: { symbol: "S", kind: "fraction" } },
  result: { symbol: "k", kind: "conductivity" },
  name: "k_sea",
  tex: String.raw`\begin{gathered} \lg\frac{k}{\mathrm{mW/(m\,K)}} = \lg(240 + 0.0002\,\sigma) \\ {} + 0.434\left(2.3 - \frac{343.5 + 0.037\,\sigma}{\theta}\right) \\ {} \times \left(1 - \frac{\theta}{647.3 + 0.03\,\sigma}\right)^{1/3} \\ \sigma = 1000\,S / 1.00472 \\ \theta = 273.15 + 1.00024\,(T/\mathrm{K} - 273.15) \end{gathered}`,
  sources: [{ key: "jamieson-tudhope-1970", where: "thermal conductivity", standing: "open reference read" }],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: 453.15,
      says: "The thermal conductivity of seawater was not measured at a temperature past the bound; the same formula is carried on.",
    },
    {
      input: "S",
      from: 0,
      to: 0.16,
      says: "The thermal conductivity of seawater was not measured at a salinity past the bound; the same formula is carried on.",
    },
  ],
  accuracy: "3 %",
  compute: ({ T, S }) => {
    const s = (1000 * S) / OLDER_SALT;
    const t = 1.00024 * (T - constants.T_C.value) + constants.T_C.value;
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the formula was fitted with the rounded logarithm
    const power = 0.434 * (2.3 - (343.5 + 0.037 * s) / t) * Math.cbrt(1 - t / (647.3 + 0.03 * s));
    return 1e-3 * (240 + 0.0002 * s) * 10 ** power;
  },
});
