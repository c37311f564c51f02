import { explicit } from "../relation/relation.ts";

/**
 * Exhaust gas in kg/s: what goes into the engine, moist air and fuel, comes out of it.
 *
 * @example exhaustFlow.compute({ m_a: 0.154, m_f: 0.00664 }) // 0.16064 kg/s
 */
export const exhaustFlow = explicit({
  id: "compression/exhaust-flow",
  title: "Exhaust gas flow",
  inputs: {
    m_a: { symbol: "m_a", kind: "massFlow" },
    m_f: { symbol: "m_f", kind: "massFlow" },
  },
  result: { symbol: "m_g", kind: "massFlow" },
  expression: "m_a + m_f",
  sources: [{ key: "heywood", where: "chapter 3, balance of mass", standing: "derived here" }],
  compute: ({ m_a, m_f }) => m_a + m_f,
});
