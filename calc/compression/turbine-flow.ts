import { explicit } from "../relation/relation.ts";

/**
 * Exhaust gas in kg/s that goes through the turbine, when the share x_wg of it goes round through a waste gate.
 *
 * @example turbineFlow.compute({ m_g: 0.16064, x_wg: 0.1 }) // 0.144576 kg/s
 */
export const turbineFlow = explicit({
  id: "compression/turbine-flow",
  title: "Gas through the turbine",
  inputs: {
    m_g: { symbol: "m_g", kind: "massFlow" },
    x_wg: { symbol: "x_wg", kind: "fraction" },
  },
  result: { symbol: "m_T", kind: "massFlow" },
  expression: "m_g * (1 - x_wg)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 4, balance of mass of a steady stream",
      standing: "derived here",
    },
  ],
  compute: ({ m_g, x_wg }) => m_g * (1 - x_wg),
});
