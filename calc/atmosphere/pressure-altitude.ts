import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const T_sl = constants.T_sl.value;
const beta_T = constants.beta_T.value;
const p_sl = constants.p_sl.value;
const psi_std = constants.psi_std.value;

/**
 * Altitude in m at which the standard atmosphere has the pressure p in Pa absolute. Up to 11 km, 22 632 Pa.
 *
 * @example pressureAltitude.compute({ p: 89874.57 }) // 1000 m
 */
export const pressureAltitude = explicit({
  id: "atmosphere/pressure-altitude",
  title: "Pressure altitude",
  inputs: {
    p: { symbol: "p", kind: "pressure" },
  },
  result: { symbol: "H_p", kind: "altitude" },
  expression: "(T_sl / beta_T) * (1 - (p / p_sl)^(1 / psi_std))",
  sources: [
    {
      key: "us-standard-atmosphere-1976",
      where: "equations 18, 23 and 33a",
      standing: "open reference read",
    },
    { key: "iso-2533", where: "the same up to 11 km", standing: "from memory" },
  ],
  ranges: [
    {
      input: "p",
      from: 22632,
      to: 177687,
      says: "The straight fall of temperature in the standard atmosphere ends at the bound; the same line is carried on past it.",
    },
  ],
  working: "si",
  compute: ({ p }) => (T_sl / beta_T) * (1 - (p / p_sl) ** (1 / psi_std)),
});
