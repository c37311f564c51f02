import { explicit } from "../relation/relation.ts";

/**
 * Absolute pressure in Pa of what a gauge reads as p_g in Pa, with the barometer at p_0 in Pa.
 *
 * @example absolutePressure.compute({ p_g: 120e3, p_0: 98e3 }) // 218 000 Pa
 */
export const absolutePressure = explicit({
  id: "atmosphere/absolute-pressure",
  title: "Absolute pressure",
  inputs: {
    p_g: { symbol: "p_g", kind: "gaugePressure" },
    p_0: { symbol: "p_0", kind: "pressure" },
  },
  result: { symbol: "p", kind: "pressure" },
  expression: "p_g + p_0",
  sources: [
    { key: "moran-shapiro", where: "chapter 1, absolute and gauge pressure", standing: "from memory" },
  ],
  compute: ({ p_g, p_0 }) => p_g + p_0,
});
