import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const T_sl = constants.T_sl.value;
const beta_T = constants.beta_T.value;
const p_sl = constants.p_sl.value;
const psi_std = constants.psi_std.value;

/**
 * Pressure in Pa absolute of the standard atmosphere at the geopotential altitude H in m, up to 11 km. Below 44 330 m.
 *
 * @example standardPressure.compute({ H: 1000 }) // 89 874.57 Pa
 */
export const standardPressure = explicit({
  id: "atmosphere/standard-pressure",
  title: "Pressure of the standard atmosphere",
  inputs: {
    H: { symbol: "H", kind: "altitude" },
  },
  result: { symbol: "p_std", kind: "pressure" },
  expression: "p_sl * (1 - beta_T * H / T_sl)^psi_std",
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
      input: "H",
      from: -5000,
      to: 11000,
      says: "The straight fall of temperature in the standard atmosphere ends at the bound; the same line is carried on past it.",
    },
  ],
  working: "si",
  compute: ({ H }) => p_sl * (1 - (beta_T * H) / T_sl) ** psi_std,
});
