import { explicit } from "../../relation/relation.ts";

/**
 * Bore ratio of the orifice plate whose lasting loss has the coefficient K on the dynamic pressure in the pipe.
 *
 * @example boreRatioForLoss.compute({ K: 12, C_D: 0.6 }) // 0.59811
 */
export const boreRatioForLoss = explicit({
  id: "circuit/orifice/bore-ratio-for-loss",
  title: "Orifice for a wanted loss",
  inputs: {
    K: { symbol: "K", kind: "ratio" },
    C_D: { symbol: "C_D", kind: "ratio" },
  },
  result: { symbol: "beta_d", kind: "ratio" },
  expression: "(C_D^2 * (1 + sqrt(K))^2 + 1 - C_D^2)^(-1/4)",
  sources: [
    {
      key: "iso-5167-2",
      where: "pressure loss coefficient, solved for the bore ratio",
      standing: "derived here",
    },
  ],
  compute: ({ K, C_D }) => (C_D ** 2 * (1 + Math.sqrt(K)) ** 2 + 1 - C_D ** 2) ** -0.25,
});
