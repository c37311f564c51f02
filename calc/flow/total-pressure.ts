import { explicit } from "../relation/relation.ts";

/**
 * Pressure in Pa that air reaches when it is brought to rest without loss, from its static pressure and the temperature part of
 * the entropy at static and at total temperature.
 *
 * @example totalPressure.compute({ p_stat: 80.5e3, s_tot: 110, s_stat: 108.36, R_m: 290.6 }) // 80 955.6 Pa
 */
export const totalPressure = explicit({
  id: "flow/total-pressure",
  title: "Total pressure",
  inputs: {
    p_stat: { symbol: "p_stat", kind: "pressure" },
    s_tot: { symbol: "s_tot", kind: "specificHeat" },
    s_stat: { symbol: "s_stat", kind: "specificHeat" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
  },
  result: { symbol: "p_tot", kind: "pressure" },
  expression: "p_stat * exp((s_tot - s_stat) / R_m)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 9, stagnation state of a compressible flow",
      standing: "from memory",
    },
  ],
  compute: ({ p_stat, s_tot, s_stat, R_m }) => p_stat * Math.exp((s_tot - s_stat) / R_m),
});
