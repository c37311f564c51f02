import { explicit } from "../relation/relation.ts";

/**
 * How much hotter the air is than the water at one end of a cooler, K; below zero where the water is hotter.
 *
 * @example temperatureGap.compute({ T: 458.15, T_w: 307.06 }) // 151.09 K
 */
export const temperatureGap = explicit({
  id: "exchanger/temperature-gap",
  title: "Temperature difference at one end",
  inputs: {
    T: { symbol: "T", kind: "temperature" },
    T_w: { symbol: "T_w", kind: "temperature" },
  },
  result: { symbol: "Delta_T", kind: "temperatureDifference" },
  expression: "T - T_w",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, terminal temperature differences",
      standing: "from memory",
    },
  ],
  compute: ({ T, T_w }) => T - T_w,
});
