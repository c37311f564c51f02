import { explicit } from "../relation/relation.ts";

/**
 * Speed over the speed of sound at the same place, both in m/s.
 *
 * @example machNumber.compute({ c: 38.6, a: 425 }) // 0.09082
 */
export const machNumber = explicit({
  id: "flow/mach-number",
  title: "Mach number",
  inputs: {
    c: { symbol: "c", kind: "speed" },
    a: { symbol: "a", kind: "speed" },
  },
  result: { symbol: "Ma", kind: "ratio" },
  expression: "c / a",
  sources: [{ key: "shapiro-1953", where: "chapter 3, Mach number", standing: "from memory" }],
  compute: ({ c, a }) => c / a,
});
