import { explicit } from "../relation/relation.ts";

/**
 * Pressure before a turbine over that after it: from the share of its absolute temperature that the gas loses in a perfect
 * turbine, below 1, and one heat-capacity ratio throughout.
 *
 * @example expansionRatio.compute({ theta_T: 0.14382, kappa_g: 1.33 }) // 1.8697
 */
export const expansionRatio = explicit({
  id: "compression/expansion-ratio",
  title: "Expansion ratio",
  inputs: {
    theta_T: { symbol: "theta_T", kind: "fraction" },
    kappa_g: { symbol: "kappa_g", kind: "ratio" },
  },
  result: { symbol: "r_T", kind: "ratio" },
  expression: "(1 - theta_T)^(-kappa_g / (kappa_g - 1))",
  sources: [
    { key: "saravanamuttoo", where: "chapter 2, turbine of a shaft power cycle", standing: "from memory" },
  ],
  compute: ({ theta_T, kappa_g }) => (1 - theta_T) ** (-kappa_g / (kappa_g - 1)),
});
