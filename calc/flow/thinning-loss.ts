import { explicit } from "../relation/relation.ts";

/**
 * What the thinning of the air on its way adds to the loss that one density gives, both in Pa.
 *
 * @example thinningLoss.compute({ Delta_p_tot: 5000, Delta_p_inc: 4950 }) // 50 Pa
 */
export const thinningLoss = explicit({
  id: "flow/thinning-loss",
  title: "What thinning adds",
  inputs: {
    Delta_p_tot: { symbol: "Delta_p_tot", kind: "pressureDifference" },
    Delta_p_inc: { symbol: "Delta_p_inc", kind: "pressureDifference" },
  },
  result: { symbol: "Delta_p_thin", kind: "pressureDifference" },
  expression: "Delta_p_tot - Delta_p_inc",
  sources: [
    {
      key: "shapiro-1953",
      where: "difference between flow of changing and of one density",
      standing: "derived here",
    },
  ],
  compute: ({ Delta_p_tot, Delta_p_inc }) => Delta_p_tot - Delta_p_inc,
});
