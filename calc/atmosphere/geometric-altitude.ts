import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const r_E = constants.r_E.value;

/**
 * Height in m above sea level of a geopotential altitude H in m.
 *
 * @example geometricAltitude.compute({ H: 5000 }) // 5003.936 m
 */
export const geometricAltitude = explicit({
  id: "atmosphere/geometric-altitude",
  title: "Geometric altitude",
  inputs: {
    H: { symbol: "H", kind: "altitude" },
  },
  result: { symbol: "z", kind: "altitude" },
  expression: "r_E * H / (r_E - H)",
  sources: [
    {
      key: "us-standard-atmosphere-1976",
      where: "equations 18, 23 and 33a",
      standing: "open reference read",
    },
    { key: "iso-2533", where: "the same up to 11 km", standing: "from memory" },
  ],
  compute: ({ H }) => (r_E * H) / (r_E - H),
});
