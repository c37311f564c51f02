import { explicit } from "../../relation/relation.ts";

/**
 * Mean speed in m/s from the mass flow per area in kg/(m² s) and the density in kg/m³.
 *
 * @example passageSpeed.compute({ G: 300, rho: 997 }) // 0.30090 m/s
 */
export const passageSpeed = explicit({
  id: "exchanger/film/passage-speed",
  title: "Speed of the water in its passages",
  inputs: {
    G: { symbol: "G", kind: "massFlux" },
    rho: { symbol: "rho", kind: "density" },
  },
  result: { symbol: "c_w", kind: "speed" },
  expression: "G / rho",

  sources: [
    { key: "white-fluid-mechanics", where: "chapter 3, conservation of mass", standing: "from memory" },
  ],

  compute: ({ G, rho }) => G / rho,
});
