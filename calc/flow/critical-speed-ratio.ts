import { explicit } from "../relation/relation.ts";

/**
 * Speed over the speed that the same air would have if it reached the speed of sound without heat.
 *
 * @example criticalSpeedRatio.compute({ Ma: 0.3, kappa: 1.4 }) // 0.3257
 */
export const criticalSpeedRatio = explicit({
  id: "flow/critical-speed-ratio",
  title: "Speed over that at choking",
  inputs: {
    Ma: { symbol: "Ma", kind: "ratio" },
    kappa: { symbol: "kappa", kind: "ratio" },
  },
  result: { symbol: "chi", kind: "ratio" },
  expression: "Ma * sqrt((kappa + 1) / (2 + (kappa - 1) * Ma^2))",
  name: "chi",
  sources: [
    {
      key: "shapiro-1953",
      where: "chapter 4, ratio of the speed to the critical speed",
      standing: "from memory",
    },
  ],
  compute: ({ Ma, kappa }) => Ma * Math.sqrt((kappa + 1) / (2 + (kappa - 1) * Ma ** 2)),
});
