import { numerical } from "../relation/relation.ts";

/** Where the two ends differ by less than this part, the series is exact to the last digit and the quotient is not. */
const ALIKE = 1e-4;

/**
 * Logarithmic mean of the temperature differences in K at the two ends of an exchanger in counterflow; both above zero, or
 * both below.
 *
 * @example logMeanDifference.compute({ Delta_T_1: 59.8, Delta_T_2: 30 }) // 43.20 K
 */
export const logMeanDifference = numerical({
  id: "exchanger/log-mean-difference",
  title: "Logarithmic mean temperature difference",
  inputs: {
    Delta_T_1: { symbol: "Delta_T_1", kind: "temperatureDifference" },
    Delta_T_2: { symbol: "Delta_T_2", kind: "temperatureDifference" },
  },
  result: { symbol: "Delta_T_lm", kind: "temperatureDifference" },
  tex: String.raw`\Delta T_\mathrm{lm} = \frac{\Delta T_1 - \Delta T_2}{\ln(\Delta T_1/\Delta T_2)}`,
  method: "Where both ends are nearly alike, the series of the quotient, which ends in their mean.",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, mean temperature difference method",
      standing: "from memory",
    },
  ],
  compute: ({ Delta_T_1, Delta_T_2 }) => {
    const half = (Delta_T_1 - Delta_T_2) / (Delta_T_1 + Delta_T_2);
    if (Math.abs(half) > ALIKE) return (Delta_T_1 - Delta_T_2) / Math.log(Delta_T_1 / Delta_T_2);
    // ln(d1/d2) = 2 artanh(half) = 2 (half + half³/3 + …)
    return (Delta_T_1 + Delta_T_2) / 2 / (1 + half ** 2 / 3 + half ** 4 / 5);
  },
});
