import { explicit } from "../relation/relation.ts";

/**
 * The friction number that is left to the speed of sound at the end of a pipe of friction number Lambda.
 *
 * @example frictionLeft.compute({ Lambda_in: 5.299, Lambda: 1.587 }) // 3.712
 */
export const frictionLeft = explicit({
  id: "flow/friction-left",
  title: "Friction number left",
  inputs: {
    Lambda_in: { symbol: "Lambda_star", kind: "ratio" },
    Lambda: { symbol: "Lambda", kind: "ratio" },
  },
  result: { symbol: "Lambda_star_end", kind: "ratio" },
  expression: "Lambda_in - Lambda",
  sources: [
    { key: "shapiro-1953", where: "chapter 6, adiabatic flow with friction", standing: "from memory" },
  ],
  compute: ({ Lambda_in, Lambda }) => Lambda_in - Lambda,
});
