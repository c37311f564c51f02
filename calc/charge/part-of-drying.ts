import { explicit } from "../relation/relation.ts";

/**
 * Part of the density gained that belongs to water that has condensed, by the gas constants in J/(kg K) before and after.
 * The logarithmic mean L_D makes the parts of all changes add up to the gain.
 *
 * @example partOfDrying.compute({ L_D: 1.6, R_m_in: 291.6, R_m_out: 289.4 }) // 0.01212
 */
export const partOfDrying = explicit({
  id: "charge/part-of-drying",
  title: "Part of drying",
  inputs: {
    L_D: { symbol: "L_D", kind: "ratio" },
    R_m_in: { symbol: "R_m_in", kind: "specificHeat" },
    R_m_out: { symbol: "R_m_out", kind: "specificHeat" },
  },
  result: { symbol: "Delta_D", kind: "ratio" },
  expression: "L_D * log(R_m_in / R_m_out)",
  sources: [
    {
      key: "ang-2005",
      where: "additive decomposition with logarithmic mean weights",
      standing: "from memory",
    },
  ],
  compute: ({ L_D, R_m_in, R_m_out }) => L_D * Math.log(R_m_in / R_m_out),
});
