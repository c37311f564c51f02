import { explicit } from "../../relation/relation.ts";

/**
 * Thermal resistance in K/W of a layer of dirt on a surface in m², from its fouling factor in m² K/W.
 *
 * @example foulingResistance.compute({ r_foul: 2e-4, A_w: 0.99 }) // 0.20202e-3 K/W
 */
export const foulingResistance = explicit({
  id: "exchanger/film/fouling-resistance",
  title: "Thermal resistance of dirt",
  inputs: {
    r_foul: { symbol: "r_foul", kind: "foulingFactor" },
    A_w: { symbol: "A_w", kind: "area" },
  },
  result: { symbol: "R_foul", kind: "thermalResistance" },
  expression: "r_foul / A_w",

  sources: [{ key: "shah-sekulic-2003", where: "chapter 13, fouling", standing: "from memory" }],

  compute: ({ r_foul, A_w }) => r_foul / A_w,
});
