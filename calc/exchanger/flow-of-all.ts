import { explicit } from "../relation/relation.ts";

/**
 * Flow in kg/s through N_c coolers side by side, each of which carries m_each.
 *
 * @example flowOfAll.compute({ m_each: 0.35, N_c: 2 }) // 0.7 kg/s
 */
export const flowOfAll = explicit({
  id: "exchanger/flow-of-all",
  title: "Flow through several coolers together",
  inputs: {
    m_each: { symbol: "m_each", kind: "massFlow" },
    N_c: { symbol: "N_c", kind: "ratio" },
  },
  result: { symbol: "m", kind: "massFlow" },
  expression: "N_c * m_each",
  sources: [
    { key: "moran-shapiro", where: "conservation of mass for a control volume", standing: "derived here" },
  ],
  compute: ({ m_each, N_c }) => N_c * m_each,
});
