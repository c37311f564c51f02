import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const r_E = constants.r_E.value;

/**
 * Geopotential altitude in m of an elevation z in m: it allows for gravity that weakens with height.
 *
 * @example geopotentialAltitude.compute({ z: 5003.936 }) // 5000 m
 */
export const geopotentialAltitude = explicit({
  id: "atmosphere/geopotential-altitude",
  title: "Geopotential altitude",
  inputs: {
    z: { symbol: "z", kind: "altitude" },
  },
  result: { symbol: "H", kind: "altitude" },
  expression: "r_E * z / (r_E + z)",
  sources: [
    {
      key: "us-standard-atmosphere-1976",
      where: "equations 18, 23 and 33a",
      standing: "open reference read",
    },
    { key: "iso-2533", where: "the same up to 11 km", standing: "from memory" },
  ],
  compute: ({ z }) => (r_E * z) / (r_E + z),
});
