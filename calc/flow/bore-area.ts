import { explicit } from "../relation/relation.ts";

/**
 * Area in m² of a round bore of diameter d in m.
 *
 * @example boreArea.compute({ d: 0.08 }) // 0.005027 m²
 */
export const boreArea = explicit({
  id: "flow/bore-area",
  title: "Area of a bore",
  inputs: { d: { symbol: "d", kind: "length" } },
  result: { symbol: "A", kind: "area" },
  expression: "pi * d^2 / 4",
  sources: [{ key: "shah-sekulic-2003", where: "area of a circle", standing: "derived here" }],
  compute: ({ d }) => (Math.PI * d ** 2) / 4,
});
