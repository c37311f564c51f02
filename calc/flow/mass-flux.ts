import { explicit } from "../relation/relation.ts";

/**
 * Mass flow per area, kg/(m² s), of m kg/s through an area of A m²: density times speed, which does not change along a
 * passage of one width.
 *
 * @example massFlux.compute({ m: 0.35, A: 0.0207375 }) // 16.878 kg/(m² s)
 */
export const massFlux = explicit({
  id: "flow/mass-flux",
  title: "Mass flow per area",
  inputs: {
    m: { symbol: "m", kind: "massFlow" },
    A: { symbol: "A", kind: "area" },
  },
  result: { symbol: "G", kind: "massFlux" },
  expression: "m / A",
  sources: [{ key: "kays-london", where: "chapter 2, mass velocity", standing: "from memory" }],
  compute: ({ m, A }) => m / A,
});
