import { explicit } from "../relation/relation.ts";

/**
 * Free-flow area in m² that is left when the share x_b of the face is blocked: as much of the passages as of the face.
 *
 * @example maskingOpenArea.compute({ A_c: 0.020738, x_b: 0.2 }) // 0.01659 m²
 */
export const maskingOpenArea = explicit({
  id: "flow/masking-open-area",
  title: "Free-flow area of a masked core",
  inputs: {
    A_c: { symbol: "A_c", kind: "area" },
    x_b: { symbol: "x_b", kind: "fraction" },
  },
  result: { symbol: "A_open", kind: "area" },
  expression: "A_c * (1 - x_b)",
  sources: [{ key: "kays-london", where: "chapter 2, free-flow area", standing: "derived here" }],
  compute: ({ A_c, x_b }) => A_c * (1 - x_b),
});
