import { explicit } from "../relation/relation.ts";

/**
 * Logarithmic mean of a density ratio and 1, which is 1 where the density is that at the inlet. It lies between the two.
 *
 * @example logMeanRatio.compute({ D_rho: 1.99906 }) // 1.44232
 */
export const logMeanRatio = explicit({
  id: "charge/log-mean-ratio",
  title: "Logarithmic mean of the density ratio and one",
  inputs: { D_rho: { symbol: "D_rho", kind: "ratio" } },
  result: { symbol: "L_D", kind: "ratio" },
  expression: "(D_rho - 1) / log(D_rho)",
  sources: [
    {
      key: "ang-2005",
      where: "additive decomposition with logarithmic mean weights",
      standing: "from memory",
    },
  ],
  // Close to 1 the logarithm of the rounded ratio would lose what the gain itself still has.
  compute: ({ D_rho }) => (D_rho === 1 ? 1 : (D_rho - 1) / Math.log1p(D_rho - 1)),
});
