import { explicit } from "../relation/relation.ts";

/**
 * By how much a stream's temperature changes in the cooler, K: the fall of the air, the rise of the water.
 *
 * @example temperatureChange.compute({ T_in: 295.15, T_out: 307.06 }) // 11.91 K
 */
export const temperatureChange = explicit({
  id: "exchanger/temperature-change",
  title: "Change of a stream's temperature",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "Delta_T", kind: "temperatureDifference" },
  expression: "abs(T_in - T_out)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, temperature range of a stream", standing: "from memory" },
  ],
  compute: ({ T_in, T_out }) => Math.abs(T_in - T_out),
});
