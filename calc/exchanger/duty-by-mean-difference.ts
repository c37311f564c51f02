import { explicit } from "../relation/relation.ts";

/**
 * Heat flow in W of a cooler with conductance UA in W/K, from the mean difference of counterflow in K and the correction F
 * for its arrangement.
 *
 * @example dutyByMeanDifference.compute({ UA: 2000, F: 0.9, Delta_T_lm: 40 }) // 72 000 W
 */
export const dutyByMeanDifference = explicit({
  id: "exchanger/duty-by-mean-difference",
  title: "Duty by the mean temperature difference",
  inputs: {
    UA: { symbol: "UA", kind: "conductance" },
    F: { symbol: "F", kind: "ratio" },
    Delta_T_lm: { symbol: "Delta_T_lm", kind: "temperatureDifference" },
  },
  result: { symbol: "Q", kind: "heatFlow" },
  expression: "UA * F * Delta_T_lm",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, mean temperature difference method",
      standing: "from memory",
    },
  ],
  compute: ({ UA, F, Delta_T_lm }) => UA * F * Delta_T_lm,
});
