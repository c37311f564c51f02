import { explicit } from "../relation/relation.ts";

/**
 * Flow in kg/s that is led back to the inlet, where m kg/s go through the cooler and m_fresh kg/s are fresh.
 *
 * @example ledBackFlow.compute({ m: 2, m_fresh: 0.532 }) // 1.468 kg/s
 */
export const ledBackFlow = explicit({
  id: "exchanger/led-back-flow",
  title: "Water that is led back",
  inputs: {
    m: { symbol: "m", kind: "massFlow" },
    m_fresh: { symbol: "m_fresh", kind: "massFlow" },
  },
  result: { symbol: "m_back", kind: "massFlow" },
  expression: "m - m_fresh",

  sources: [{ key: "cengel-boles", where: "chapter 5, conservation of mass", standing: "from memory" }],

  compute: ({ m, m_fresh }) => m - m_fresh,
});
