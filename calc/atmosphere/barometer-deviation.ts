import { explicit } from "../relation/relation.ts";

/**
 * How far the barometer is above the standard atmosphere at the same elevation, Pa; negative below it.
 *
 * @example barometerDeviation.compute({ p_0: 81500, p_std: 80987 }) // 513 Pa
 */
export const barometerDeviation = explicit({
  id: "atmosphere/barometer-deviation",
  title: "Barometer above the standard atmosphere",
  inputs: {
    p_0: { symbol: "p_0", kind: "pressure" },
    p_std: { symbol: "p_std", kind: "pressure" },
  },
  result: { symbol: "Delta_p_std", kind: "pressureDifference" },
  expression: "p_0 - p_std",
  sources: [
    {
      key: "us-standard-atmosphere-1976",
      where: "pressure of the standard atmosphere, with which the reading is compared",
      standing: "common practice",
    },
  ],
  compute: ({ p_0, p_std }) => p_0 - p_std,
});
