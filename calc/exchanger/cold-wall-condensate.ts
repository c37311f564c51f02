import { explicit } from "../relation/relation.ts";

/**
 * Water in kg/s that condenses from m_da kg/s of dry air where every wall is as cold as T_w in K: of the part of the air that
 * comes down to the wall, all vapour above saturation there, w_s. T_in and T_out in K, w in kg/kg.
 *
 * The straight line between inlet and wall on the chart of moist air, with heat and vapour moving alike (Lewis number 1). T_w
 * below T_in, T_out between them, w above w_s.
 *
 * @example coldWallCondensate.compute({ m_da: 1.0703, w_in: 0.0277557, w_s: 0.0084, T_in: 443.15, T_out: 311.15, T_w: 301.15 }) // 0.01926 kg/s
 */
export const coldWallCondensate = explicit({
  id: "exchanger/cold-wall-condensate",
  title: "Condensate where all walls are as cold as the water",
  inputs: {
    m_da: { symbol: "m_da", kind: "massFlow" },
    w_in: { symbol: "w_in", kind: "humidityRatio" },
    w_s: { symbol: "w_s", kind: "humidityRatio" },
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
    T_w: { symbol: "T_w", kind: "temperature" },
  },
  result: { symbol: "m_c", kind: "massFlow" },
  expression: "m_da * (w_in - w_s) * ((T_in - T_out) / (T_in - T_w))",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, mixing line on the chart of moist air",
      standing: "derived here",
    },
  ],
  accuracy: "an estimate: the walls of a real cooler are warmer than its water",
  compute: ({ m_da, w_in, w_s, T_in, T_out, T_w }) => m_da * (w_in - w_s) * ((T_in - T_out) / (T_in - T_w)),
});
