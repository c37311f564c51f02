import { explicit } from "../relation/relation.ts";

/**
 * Pressure altitude in m of a place at geopotential altitude H, where H_Q is the pressure altitude of the sea-level pressure
 * that a weather report or a tower gives. It is how an altimeter is set.
 *
 * @example altimeterAltitude.compute({ H: 1850, H_Q: -100 }) // 1750 m
 */
export const altimeterAltitude = explicit({
  id: "atmosphere/altimeter-altitude",
  title: "Altitude under a sea-level setting",
  inputs: {
    H: { symbol: "H", kind: "altitude" },
    H_Q: { symbol: "H_Q", kind: "altitude" },
  },
  result: { symbol: "H_p", kind: "altitude" },
  expression: "H + H_Q",
  sources: [
    { key: "icao-8896", where: "definition of the sea-level setting of altimeters", standing: "from memory" },
  ],
  compute: ({ H, H_Q }) => H + H_Q,
});
