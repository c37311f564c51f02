import { constants } from "../constants.ts";
import { property } from "../relation/relation.ts";

/**
 * Viscosity in Pa s of seawater at T in K, of absolute salinity S in kg/kg: a factor on the viscosity of pure water, whatever
 * the pressure. 0 to 180 °C, 0 to 0.15 kg/kg.
 *
 * @example seawaterViscosity.compute({ T: 293.15, S: 0.035 }) // 1.0766e-3 Pa s
 */
export const seawaterViscosity = property({
  id: "fluids/seawater-viscosity",
  title: "Viscosity of seawater",
  inputs: { T: { symbol: "T", kind: "temperature" }, S: { symbol: "S", kind: "fraction" } },
  result: { symbol: "mu", kind: "viscosity" },
  name: "mu_sea",
  tex: String.raw`\begin{gathered} \mu = \mu_\mathrm{pure}\,(1 + A\,S + B\,S^2) \\ \frac{\mu_\mathrm{pure}}{\mathrm{Pa\,s}} = 4.2844 \times 10^{-5} \\ {} + \frac{1}{0.157\,(t + 64.993)^2 - 91.296} \\ A = 1.541 + 0.01998\,t - 9.52 \times 10^{-5}\,t^2 \\ B = 7.974 - 0.07561\,t + 4.724 \times 10^{-4}\,t^2 \\ t = T/\mathrm{K} - 273.15 \end{gathered}`,
  sources: [{ key: "sharqawy-2010", where: "equations 22 and 23, viscosity", standing: "from memory" }],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: 453.15,
      says: "The viscosity of seawater was not measured at a temperature past the bound; the same formula is carried on.",
    },
    {
      input: "S",
      from: 0,
      to: 0.15,
      says: "The viscosity of seawater was not measured at a salinity past the bound; the same formula is carried on.",
    },
  ],
  accuracy: "1.5 %",
  compute: ({ T, S }) => {
    const t = T - constants.T_C.value;
    const pure = 4.2844e-5 + 1 / (0.157 * (t + 64.993) ** 2 - 91.296);
    const A = 1.541 + t * (1.998e-2 - t * 9.52e-5);
    const B = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
    return pure * (1 + S * (A + S * B));
  },
});
