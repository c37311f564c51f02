import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a cone that widens, on the speed in the smaller bore; theta_c is its full angle in rad. From 45° on it is no
 * better than a step.
 *
 * @example diffuserLoss.compute({ theta_c: 0.2094, beta_d: 0.76 }) // 0.04848
 */
export const diffuserLoss = explicit({
  id: "flow/diffuser-loss",
  title: "Loss coefficient of a conical diffuser",
  inputs: {
    theta_c: { symbol: "theta_c", kind: "angle" },
    beta_d: { symbol: "beta_d", kind: "ratio" },
  },
  result: { symbol: "K", kind: "ratio" },
  expression: "min(2.6 * sin(theta_c / 2), 1) * (1 - beta_d^2)^2",
  sources: [
    { key: "fluids", where: "fittings, conical diffuser", standing: "open reference read" },
    { key: "crane-tp-410", where: "formula for gradual enlargement", standing: "from memory" },
  ],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ theta_c, beta_d }) => Math.min(2.6 * Math.sin(theta_c / 2), 1) * (1 - beta_d ** 2) ** 2,
});
