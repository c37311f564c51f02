import { explicit } from "../relation/relation.ts";

/**
 * Impact pressure, Pa: what the total pressure stands above the static one. In slow air it is the dynamic pressure.
 *
 * @example impactPressure.compute({ p_tot: 80987, p_stat: 80526 }) // 461 Pa
 */
export const impactPressure = explicit({
  id: "flow/impact-pressure",
  title: "Impact pressure",
  inputs: {
    p_tot: { symbol: "p_tot", kind: "pressure" },
    p_stat: { symbol: "p_stat", kind: "pressure" },
  },
  result: { symbol: "p_imp", kind: "pressureDifference" },
  expression: "p_tot - p_stat",
  sources: [{ key: "shapiro-1953", where: "chapter 4, impact pressure", standing: "from memory" }],
  compute: ({ p_tot, p_stat }) => p_tot - p_stat,
});
