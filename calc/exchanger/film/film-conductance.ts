import { explicit } from "../../relation/relation.ts";

/**
 * Heat conductance in W/K between the water and the surface in m² that it wets, by its heat transfer coefficient in W/(m² K).
 *
 * @example filmConductance.compute({ alpha: 1323, A_w: 0.99 }) // 1309.8 W/K
 */
export const filmConductance = explicit({
  id: "exchanger/film/film-conductance",
  title: "Heat conductance from the water to its wall",
  inputs: {
    alpha: { symbol: "alpha", kind: "filmCoefficient" },
    A_w: { symbol: "A_w", kind: "area" },
  },
  result: { symbol: "UA_film", kind: "conductance" },
  expression: "alpha * A_w",

  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, thermal resistances in series", standing: "from memory" },
  ],

  compute: ({ alpha, A_w }) => alpha * A_w,
});
