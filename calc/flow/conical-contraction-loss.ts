import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a cone that narrows, on the speed in the smaller bore, with the friction on its wall. theta_c is its full
 * angle in rad, f Darcy's friction factor in the smaller bore.
 *
 * @example conicalContractionLoss.compute({ f: 0.018, theta_c: 0.5236, beta_d: 0.76, lambda_j: 1.1004 }) // 0.032155
 */
export const conicalContractionLoss = explicit({
  id: "flow/conical-contraction-loss",
  title: "Loss coefficient of a conical contraction",
  inputs: {
    f: { symbol: "f", kind: "ratio" },
    theta_c: { symbol: "theta_c", kind: "angle" },
    beta_d: { symbol: "beta_d", kind: "ratio" },
    lambda_j: { symbol: "lambda_j", kind: "ratio" },
  },
  result: { symbol: "K", kind: "ratio" },
  expression:
    "f * (1 - beta_d^4) / (8 * sin(theta_c / 2)) + 0.0696 * sin(theta_c / 2) * (1 - beta_d^5) * lambda_j^2 + (lambda_j - 1)^2",
  sources: [
    { key: "fluids", where: "fittings, conical contraction", standing: "open reference read" },
    { key: "rennels-hudson-2012", where: "conical contraction", standing: "from memory" },
  ],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ f, theta_c, beta_d, lambda_j }) =>
    (f * (1 - beta_d ** 4)) / (8 * Math.sin(theta_c / 2)) +
    0.0696 * Math.sin(theta_c / 2) * (1 - beta_d ** 5) * lambda_j ** 2 +
    (lambda_j - 1) ** 2,
});
