import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a pipe that narrows in one sharp step, on the speed in the smaller bore.
 *
 * @example sharpContractionLoss.compute({ lambda_j: 1.4209, beta_d: 0.76 }) // 0.2820
 */
export const sharpContractionLoss = explicit({
  id: "flow/sharp-contraction-loss",
  title: "Loss coefficient of a sharp contraction",
  inputs: {
    lambda_j: { symbol: "lambda_j", kind: "ratio" },
    beta_d: { symbol: "beta_d", kind: "ratio" },
  },
  result: { symbol: "K", kind: "ratio" },
  expression: "0.0696 * (1 - beta_d^5) * lambda_j^2 + (lambda_j - 1)^2",
  sources: [
    { key: "fluids", where: "fittings, sharp contraction", standing: "open reference read" },
    { key: "rennels-hudson-2012", where: "sharp contraction", standing: "from memory" },
  ],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ lambda_j, beta_d }) => 0.0696 * (1 - beta_d ** 5) * lambda_j ** 2 + (lambda_j - 1) ** 2,
});
