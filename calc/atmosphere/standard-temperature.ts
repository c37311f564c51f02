import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const T_sl = constants.T_sl.value;
const beta_T = constants.beta_T.value;

/**
 * Temperature in K of the standard atmosphere at the geopotential altitude H in m, up to 11 km.
 *
 * @example standardTemperature.compute({ H: 1000 }) // 281.65 K
 */
export const standardTemperature = explicit({
  id: "atmosphere/standard-temperature",
  title: "Temperature of the standard atmosphere",
  inputs: {
    H: { symbol: "H", kind: "altitude" },
  },
  result: { symbol: "T_std", kind: "temperature" },
  expression: "T_sl - beta_T * H",
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
  compute: ({ H }) => T_sl - beta_T * H,
});
