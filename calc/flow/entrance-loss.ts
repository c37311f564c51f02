import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of an entrance to a pipe from a large space, flush with the wall. R_l is the radius of the lip over the bore.
 * A sharp edge has 0.57; other handbooks say 0.5.
 *
 * @example entranceLoss.compute({ R_l: 0.1, lambda_j: 1.3026 }) // 0.2029
 */
export const entranceLoss = explicit({
  id: "flow/entrance-loss",
  title: "Loss coefficient of an entrance",
  inputs: {
    R_l: { symbol: "R_l", kind: "ratio" },
    lambda_j: { symbol: "lambda_j", kind: "ratio" },
  },
  result: { symbol: "K_ent", kind: "ratio" },
  expression: "0.0696 * (1 - 0.569 * min(R_l, 1)) * lambda_j^2 + (lambda_j - 1)^2",
  sources: [
    { key: "fluids", where: "fittings, rounded entrance", standing: "open reference read" },
    { key: "rennels-hudson-2012", where: "rounded entrance", standing: "from memory" },
  ],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ R_l, lambda_j }) =>
    0.0696 * (1 - 0.569 * Math.min(R_l, 1)) * lambda_j ** 2 + (lambda_j - 1) ** 2,
});
