import { explicit } from "../relation/relation.ts";

/**
 * Dry air in kg/s in the moist air flow m_a of humidity ratio w.
 *
 * @example dryAirFlow.compute({ m_a: 1.02, w: 0.02 }) // 1 kg/s
 */
export const dryAirFlow = explicit({
  id: "engine/dry-air-flow",
  title: "Dry air in moist air",
  inputs: {
    m_a: { symbol: "m_a", kind: "massFlow" },
    w: { symbol: "w", kind: "humidityRatio" },
  },
  result: { symbol: "m_da", kind: "massFlow" },
  expression: "m_a / (1 + w)",
  sources: [
    {
      key: "moran-shapiro",
      where: "chapter 12, balance of mass of air and vapour",
      standing: "derived here",
    },
  ],
  compute: ({ m_a, w }) => m_a / (1 + w),
});
