import { explicit } from "../relation/relation.ts";

/**
 * Shaft power in W from the moist air flow in kg/s and the work in J/kg.
 *
 * @example shaftPower.compute({ m_a: 0.15405, Delta_h: 102253 }) // 15 752 W
 */
export const shaftPower = explicit({
  id: "compression/shaft-power",
  title: "Shaft power of the compressor",
  inputs: {
    m_a: { symbol: "m_a", kind: "massFlow" },
    Delta_h: { symbol: "Delta_h", kind: "specificEnergy" },
  },
  result: { symbol: "W_c", kind: "power" },
  expression: "m_a * Delta_h",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ m_a, Delta_h }) => m_a * Delta_h,
});
