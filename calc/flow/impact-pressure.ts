import { explicit } from "../relation/relation.ts";

/**
 * What the total pressure stands above the static one, Pa: at low speed half the density times the square of the speed.
 *
 * @example impactPressure.compute({ p_tot: 80987, p_stat: 80526 }) // 461 Pa
 */
export const impactPressure = explicit({
  id: "flow/impact-pressure",
  title: "Total less static pressure",
  inputs: {
    p_tot: { symbol: "p_tot", kind: "pressure" },
    p_stat: { symbol: "p_stat", kind: "pressure" },
  },
  result: { symbol: "p_dyn", kind: "pressureDifference" },
  expression: "p_tot - p_stat",
  sources: [{ key: "shapiro-1953", where: "chapter 4, impact pressure", standing: "from memory" }],
  compute: ({ p_tot, p_stat }) => p_tot - p_stat,
});
