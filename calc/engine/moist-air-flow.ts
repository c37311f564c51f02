import { explicit } from "../relation/relation.ts";

/**
 * Moist air flow in kg/s that carries the dry air flow m_da at humidity ratio w.
 *
 * @example moistAirFlow.compute({ m_da: 1, w: 0.02 }) // 1.02 kg/s
 */
export const moistAirFlow = explicit({
  id: "engine/moist-air-flow",
  title: "Moist air from dry air",
  inputs: {
    m_da: { symbol: "m_da", kind: "massFlow" },
    w: { symbol: "w", kind: "humidityRatio" },
  },
  result: { symbol: "m_a", kind: "massFlow" },
  expression: "m_da * (1 + w)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 12, balance of mass of air and vapour",
      standing: "derived here",
    },
  ],
  compute: ({ m_da, w }) => m_da * (1 + w),
});
