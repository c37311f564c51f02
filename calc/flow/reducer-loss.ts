import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a cone or a step that narrows, on the speed in the smaller bore: the simpler formula. theta_c is the full
 * angle in rad, 180° for a step.
 *
 * @example reducerLoss.compute({ theta_c: 0.5236, beta_d: 0.76 }) // 0.08746
 */
export const reducerLoss = explicit({
  id: "flow/reducer-loss",
  title: "Loss coefficient of a reducer",
  inputs: {
    theta_c: { symbol: "theta_c", kind: "angle" },
    beta_d: { symbol: "beta_d", kind: "ratio" },
  },
  result: { symbol: "K", kind: "ratio" },
  expression: "min(0.8 * sin(theta_c / 2), 0.5 * sqrt(sin(theta_c / 2))) * (1 - beta_d^2)",
  sources: [
    { key: "fluids", where: "fittings, conical contraction", standing: "open reference read" },
    { key: "crane-tp-410", where: "formula for gradual contraction", standing: "from memory" },
  ],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ theta_c, beta_d }) =>
    Math.min(0.8 * Math.sin(theta_c / 2), 0.5 * Math.sqrt(Math.sin(theta_c / 2))) * (1 - beta_d ** 2),
});
