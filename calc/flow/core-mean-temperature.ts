import { explicit } from "../relation/relation.ts";

/**
 * Mean of the temperatures before and after a core, K, at which the viscosity is taken.
 *
 * @example coreMeanTemperature.compute({ T_in: 458.15, T_out: 331.93 }) // 395.04 K
 */
export const coreMeanTemperature = explicit({
  id: "flow/core-mean-temperature",
  title: "Mean temperature of the air",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "T_mean", kind: "temperature" },
  expression: "(T_in + T_out) / 2",
  sources: [
    { key: "kays-london", where: "chapter 2, properties at a mean temperature", standing: "from memory" },
  ],
  compute: ({ T_in, T_out }) => (T_in + T_out) / 2,
});
