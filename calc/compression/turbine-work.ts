import { explicit } from "../relation/relation.ts";

/**
 * Work in J for each kilogram of exhaust gas: power of the turbine in W over the gas through it in kg/s.
 *
 * @example turbineWork.compute({ W_T: 16239, m_T: 0.16064 }) // 101 089 J/kg
 */
export const turbineWork = explicit({
  id: "compression/turbine-work",
  title: "Work of the turbine",
  inputs: {
    W_T: { symbol: "W_T", kind: "power" },
    m_T: { symbol: "m_T", kind: "massFlow" },
  },
  result: { symbol: "Delta_h_T", kind: "specificEnergy" },
  expression: "W_T / m_T",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of energy of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ W_T, m_T }) => W_T / m_T,
});
