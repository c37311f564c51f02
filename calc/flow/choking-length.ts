import { explicit } from "../relation/relation.ts";

/**
 * Length of pipe in m, of bore d in m, at whose end a stream would reach the speed of sound, with the loss coefficients K of its
 * parts taken off first.
 *
 * @example chokingLength.compute({ Lambda_star: 70, K: 1.4, f: 0.018, d: 0.076 }) // 289.6 m
 */
export const chokingLength = explicit({
  id: "flow/choking-length",
  title: "Length at which a pipe chokes",
  inputs: {
    Lambda_star: { symbol: "Lambda_star", kind: "ratio" },
    K: { symbol: "K", kind: "ratio" },
    f: { symbol: "f", kind: "ratio" },
    d: { symbol: "d", kind: "length" },
  },
  result: { symbol: "L_star", kind: "length" },
  expression: "(Lambda_star - K) * d / f",
  sources: [
    { key: "shapiro-1953", where: "chapter 6, adiabatic flow with friction", standing: "from memory" },
  ],
  compute: ({ Lambda_star, K, f, d }) => ((Lambda_star - K) * d) / f,
});
