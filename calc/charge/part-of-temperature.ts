import { explicit } from "../relation/relation.ts";

/**
 * Part of the density gained that belongs to a change of temperature, both in K.
 * The logarithmic mean L_D makes the parts of all changes add up to the gain.
 *
 * @example partOfTemperature.compute({ L_D: 1.44232, T_in: 405.573, T_out: 321.783 }) // 0.33379
 */
export const partOfTemperature = explicit({
  id: "charge/part-of-temperature",
  title: "Part of a change of temperature",
  inputs: {
    L_D: { symbol: "L_D", kind: "ratio" },
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "Delta_D", kind: "ratio" },
  expression: "L_D * log(T_in / T_out)",
  sources: [
    {
      key: "ang-2005",
      where: "additive decomposition with logarithmic mean weights",
      standing: "from memory",
    },
  ],
  compute: ({ L_D, T_in, T_out }) => L_D * Math.log(T_in / T_out),
});
