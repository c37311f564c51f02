import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const R_sa = constants.R_sa.value;
const T_sl = constants.T_sl.value;
const beta_T = constants.beta_T.value;
const g_0 = constants.g_0.value;
const p_sl = constants.p_sl.value;
const exponent = g_0 / (R_sa * beta_T);

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
  expression: "p_sl * (1 - beta_T * H / T_sl)^(g_0 / (R_sa * beta_T))",
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
      says: "The standard atmosphere falls by 6.5 K per km up to 11 km only; above, the same line is carried on.",
    },
  ],
  working: "si",
  compute: ({ H }) => p_sl * (1 - (beta_T * H) / T_sl) ** exponent,
});
