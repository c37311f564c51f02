import { explicit } from "../../relation/relation.ts";

/**
 * Heat transfer coefficient in W/(m² K) from the Nusselt number, the conductivity in W/(m K) and the hydraulic diameter in m.
 *
 * @example filmCoefficient.compute({ Nu: 10.4944, k: 0.6112, D_h: 0.00484848 }) // 1322.9 W/(m² K)
 */
export const filmCoefficient = explicit({
  id: "exchanger/film/film-coefficient",
  title: "Heat transfer coefficient in a passage",
  inputs: {
    Nu: { symbol: "Nu", kind: "ratio" },
    k: { symbol: "k", kind: "conductivity" },
    D_h: { symbol: "D_h", kind: "length" },
  },
  result: { symbol: "alpha", kind: "filmCoefficient" },
  expression: "Nu * k / D_h",
  working: "si",
  sources: [{ key: "incropera-dewitt", where: "chapter 6, Nusselt number", standing: "from memory" }],

  compute: ({ Nu, k, D_h }) => (Nu * k) / D_h,
});
