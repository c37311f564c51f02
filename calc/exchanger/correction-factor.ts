import { explicit } from "../relation/relation.ts";

/**
 * How much of the logarithmic mean difference an arrangement puts to use: 1 in counterflow, less in every other. Q in W, UA in
 * W/K, Delta_T_lm in K.
 *
 * @example correctionFactor.compute({ Q: 44796, UA: 559.26, Delta_T_lm: 81.29 }) // 0.9853
 */
export const correctionFactor = explicit({
  id: "exchanger/correction-factor",
  title: "Correction of the mean temperature difference",
  inputs: {
    Q: { symbol: "Q", kind: "heatFlow" },
    UA: { symbol: "UA", kind: "conductance" },
    Delta_T_lm: { symbol: "Delta_T_lm", kind: "temperatureDifference" },
  },
  result: { symbol: "F", kind: "ratio" },
  expression: "Q / (UA * Delta_T_lm)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, definition of the correction factor",
      standing: "from memory",
    },
  ],
  compute: ({ Q, UA, Delta_T_lm }) => Q / (UA * Delta_T_lm),
});
