import { explicit } from "../relation/relation.ts";

/**
 * How much faster the air is where its jet is narrowest, after a contraction, than in the pipe behind it. theta_c is the full
 * angle of the cone in rad; a step has 180°.
 *
 * @example contractionJet.compute({ theta_c: 3.1416, beta_d: 0.76 }) // 1.42096
 */
export const contractionJet = explicit({
  id: "flow/contraction-jet",
  title: "Jet after a contraction",
  inputs: {
    theta_c: { symbol: "theta_c", kind: "angle" },
    beta_d: { symbol: "beta_d", kind: "ratio" },
  },
  result: { symbol: "lambda_j", kind: "ratio" },
  expression: "1 + 0.622 * (theta_c / pi)^0.8 * (1 - 0.215 * beta_d^2 - 0.785 * beta_d^5)",
  sources: [
    { key: "fluids", where: "fittings, contractions", standing: "open reference read" },
    { key: "rennels-hudson-2012", where: "contractions", standing: "from memory" },
  ],
  compute: ({ theta_c, beta_d }) =>
    1 + 0.622 * (theta_c / Math.PI) ** 0.8 * (1 - 0.215 * beta_d ** 2 - 0.785 * beta_d ** 5),
});
