import { explicit } from "../../relation/relation.ts";

/**
 * Surface in m² of all passages, from the area A of a pass in m², its length L and the hydraulic diameter in m, and the number of
 * passes: what the definition of the hydraulic diameter makes of them.
 *
 * @example wettedSurface.compute({ A: 0.003, L: 0.2, N_p: 2, D_h: 0.00484848 }) // 0.9900 m²
 */
export const wettedSurface = explicit({
  id: "exchanger/film/wetted-surface",
  title: "Surface that the water wets",
  inputs: {
    A: { symbol: "A", kind: "area" },
    L: { symbol: "L", kind: "length" },
    N_p: { symbol: "N_p", kind: "ratio" },
    D_h: { symbol: "D_h", kind: "length" },
  },
  result: { symbol: "A_w", kind: "area" },
  expression: "4 * A * L * N_p / D_h",

  sources: [{ key: "shah-sekulic-2003", where: "chapter 8, hydraulic diameter", standing: "from memory" }],

  compute: ({ A, L, N_p, D_h }) => (4 * A * L * N_p) / D_h,
});
