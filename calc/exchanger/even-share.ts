import { explicit } from "../relation/relation.ts";

/**
 * Flow in kg/s through one of N_c coolers that stand side by side and share the whole flow m evenly.
 *
 * @example evenShare.compute({ m: 3, N_c: 2 }) // 1.5 kg/s
 */
export const evenShare = explicit({
  id: "exchanger/even-share",
  title: "Flow through one of several coolers",
  inputs: {
    m: { symbol: "m", kind: "massFlow" },
    N_c: { symbol: "N_c", kind: "ratio" },
  },
  result: { symbol: "m_each", kind: "massFlow" },
  expression: "m / N_c",
  sources: [
    { key: "moran-shapiro", where: "conservation of mass for a control volume", standing: "derived here" },
  ],
  compute: ({ m, N_c }) => m / N_c,
});
