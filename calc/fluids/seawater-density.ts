import { constants } from "../constants.ts";
import { property } from "../relation/relation.ts";
import { practicalSalinity } from "./practical-salinity.ts";

/**
 * Density of seawater in kg/m³ at T in K, of absolute salinity S in kg/kg, at p in Pa absolute.
 *
 * The equation of state of 1980 at one atmosphere, with the compression of a few atmospheres added. Holds to 40 °C and
 * 42 g/kg within 0.005 %; to 60 °C within 0.02 %.
 *
 * @example seawaterDensity.compute({ T: 288.15, S: 0.035, p: 101325 }) // 1025.8 kg/m³
 */
export const seawaterDensity = property({
  id: "fluids/seawater-density",
  title: "Density of seawater",
  inputs: {
    T: { symbol: "T", kind: "temperature" },
    S: { symbol: "S", kind: "fraction" },
    p: { symbol: "p", kind: "pressure" },
  },
  result: { symbol: "rho", kind: "density" },
  name: "rho_sea",
  tex: String.raw`\begin{gathered} \rho = \bigl(\rho_\mathrm{pure}(t) + A(t)\,S_\mathrm{P} + B(t)\,S_\mathrm{P}^{3/2} \\ {} + C\,S_\mathrm{P}^2\bigr)\,\bigl(1 + \beta\,(p - 1\,\mathrm{atm})\bigr) \end{gathered}`,
  sources: [
    { key: "unesco-1983", where: "density at one atmosphere, polynomial", standing: "from memory" },
    {
      key: "unesco-1983",
      where: "compressibility near the surface, one mean value",
      standing: "derived here",
    },
  ],
  ranges: [
    {
      input: "T",
      from: 273.15,
      to: 333.15,
      says: "The density of seawater is known from the freezing point of fresh water to that of a hot drain only, and this is past the bound.",
    },
    {
      input: "S",
      from: 0,
      to: 0.042,
      says: "The density of seawater is known up to the salinity of warm enclosed seas, and this is past the bound.",
    },
  ],
  accuracy: "0.02 %",
  compute: ({ T, S, p }) => {
    const t = 1.00024 * (T - constants.T_C.value);
    const s = practicalSalinity.compute({ S });
    const pure =
      999.842594 +
      t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
    const A = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
    const B = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
    return (
      (pure + A * s + B * s * Math.sqrt(s) + 4.8314e-4 * s * s) * (1 + 4.4e-10 * (p - constants.p_sl.value))
    );
  },
});
