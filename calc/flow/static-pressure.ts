import { explicit } from "../relation/relation.ts";

/**
 * Pressure in Pa that a hole in the wall shows, from the total pressure and the temperature part of the entropy at static and at
 * total temperature.
 *
 * @example staticPressure.compute({ p_tot: 80.987e3, s_stat: 108.36, s_tot: 110, R_m: 290.6 }) // 80 531.2 Pa
 */
export const staticPressure = explicit({
  id: "flow/static-pressure",
  title: "Static pressure",
  inputs: {
    p_tot: { symbol: "p_tot", kind: "pressure" },
    s_stat: { symbol: "s_stat", kind: "specificHeat" },
    s_tot: { symbol: "s_tot", kind: "specificHeat" },
    R_m: { symbol: "R_m", kind: "specificHeat" },
  },
  result: { symbol: "p_stat", kind: "pressure" },
  expression: "p_tot * exp((s_stat - s_tot) / R_m)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 9, stagnation state of a compressible flow",
      standing: "from memory",
    },
  ],
  compute: ({ p_tot, s_stat, s_tot, R_m }) => p_tot * Math.exp((s_stat - s_tot) / R_m),
});
