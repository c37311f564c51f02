import { explicit } from "../relation/relation.ts";

/**
 * Water in kg/s that leaves the air when its humidity ratio falls from w_in to w_out.
 *
 * @example condensateFlow.compute({ m_da: 1.0703, w_in: 0.0277557, w_out: 0.01525 }) // 0.013385 kg/s
 */
export const condensateFlow = explicit({
  id: "exchanger/condensate-flow",
  title: "Condensed water",
  inputs: {
    m_da: { symbol: "m_da", kind: "massFlow" },
    w_in: { symbol: "w_in", kind: "humidityRatio" },
    w_out: { symbol: "w_out", kind: "humidityRatio" },
  },
  result: { symbol: "m_c", kind: "massFlow" },
  expression: "m_da * (w_in - w_out)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 12, balance of mass of air and vapour",
      standing: "derived here",
    },
  ],
  compute: ({ m_da, w_in, w_out }) => m_da * (w_in - w_out),
});
