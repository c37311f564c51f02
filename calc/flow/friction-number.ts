import { explicit } from "../relation/relation.ts";

/**
 * What a pipe of one bore costs, as a multiple of the dynamic pressure on the spot: friction f L/d and the loss coefficients K of
 * its parts, lumped as if they too were friction. L and d in m.
 *
 * @example frictionNumber.compute({ f: 0.018, L: 3, d: 0.076, K: 0.876 }) // 1.587
 */
export const frictionNumber = explicit({
  id: "flow/friction-number",
  title: "Friction number of a pipe",
  inputs: {
    f: { symbol: "f", kind: "ratio" },
    L: { symbol: "L", kind: "length" },
    d: { symbol: "d", kind: "length" },
    K: { symbol: "K", kind: "ratio" },
  },
  result: { symbol: "Lambda", kind: "ratio" },
  expression: "f * L / d + K",
  sources: [
    { key: "shapiro-1953", where: "chapter 6, adiabatic flow with friction", standing: "from memory" },
    {
      key: "shapiro-1953",
      where: "the loss coefficients lumped with the friction",
      standing: "derived here",
    },
  ],
  compute: ({ f, L, d, K }) => (f * L) / d + K,
});
