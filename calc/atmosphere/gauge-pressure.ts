import { explicit } from "../relation/relation.ts";

/**
 * Pressure above that of the barometer, Pa. Both p and p_0 are absolute.
 *
 * @example gaugePressure.compute({ p: 211440, p_0: 98000 }) // 113 440 Pa
 */
export const gaugePressure = explicit({
  id: "atmosphere/gauge-pressure",
  title: "Gauge pressure",
  inputs: {
    p: { symbol: "p", kind: "pressure" },
    p_0: { symbol: "p_0", kind: "pressure" },
  },
  result: { symbol: "p_g", kind: "gaugePressure" },
  expression: "p - p_0",
  sources: [
    { key: "moran-shapiro", where: "chapter 1, absolute and gauge pressure", standing: "from memory" },
  ],
  compute: ({ p, p_0 }) => p - p_0,
});
