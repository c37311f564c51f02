import { explicit } from "../relation/relation.ts";

/**
 * Pressure altitude in m of the sea-level setting with which an altimeter shows the elevation H where the pressure altitude
 * is H_p. The standard pressure at it is the setting.
 *
 * @example seaLevelAltitude.compute({ H_p: 1750, H: 1850 }) // -100 m
 */
export const seaLevelAltitude = explicit({
  id: "atmosphere/sea-level-altitude",
  title: "Pressure altitude of the sea-level setting",
  inputs: {
    H_p: { symbol: "H_p", kind: "altitude" },
    H: { symbol: "H", kind: "altitude" },
  },
  result: { symbol: "H_Q", kind: "altitude" },
  expression: "H_p - H",
  sources: [
    { key: "icao-8896", where: "definition of the sea-level setting of altimeters", standing: "from memory" },
  ],
  compute: ({ H_p, H }) => H_p - H,
});
