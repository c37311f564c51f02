import { constants } from "../constants.ts";
import { property } from "../relation/relation.ts";
import { practicalSalinity } from "./practical-salinity.ts";

/** Pa in a decibar, in which the formula counts the pressure above the atmosphere. */
const DECIBAR = 1e4;

/**
 * Temperature in K at which seawater of absolute salinity S in kg/kg begins to freeze, at p in Pa absolute.
 *
 * Holds for water that air has dissolved in, to 42 g/kg and 1.1 MPa; without air it freezes some thousandths of a kelvin
 * later.
 *
 * @example seawaterFreezing.compute({ S: 0.035, p: 101325 }) // 271.237 K
 */
export const seawaterFreezing = property({
  id: "fluids/seawater-freezing",
  title: "Freezing temperature of seawater",
  inputs: { S: { symbol: "S", kind: "fraction" }, p: { symbol: "p", kind: "pressure" } },
  result: { symbol: "T_f", kind: "temperature" },
  name: "T_f_sea",
  tex: String.raw`\begin{gathered} \frac{T_\mathrm{f}}{\mathrm{K}} = 273.15 - 0.0575\,S_\mathrm{P} + 1.710523 \times 10^{-3}\,S_\mathrm{P}^{3/2} \\ {} - 2.154996 \times 10^{-4}\,S_\mathrm{P}^2 - 7.53 \times 10^{-8}\,\frac{p - 1\,\mathrm{atm}}{\mathrm{Pa}} \end{gathered}`,
  sources: [{ key: "unesco-1983", where: "freezing point of seawater", standing: "from memory" }],
  ranges: [
    {
      input: "S",
      from: 0,
      to: 0.042,
      says: "The freezing temperature of seawater is known up to the salinity of warm enclosed seas, and this is past the bound.",
    },
  ],
  accuracy: "0.01 K",
  compute: ({ S, p }) => {
    const s = practicalSalinity.compute({ S });
    const below = s * (0.0575 - 1.710523e-3 * Math.sqrt(s) + 2.154996e-4 * s);
    return constants.T_C.value - below - (7.53e-4 * (p - constants.p_sl.value)) / DECIBAR;
  },
});
