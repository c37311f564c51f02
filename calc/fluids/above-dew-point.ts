import { explicit } from "../relation/relation.ts";

/**
 * How far air or a wall of T in K is above the dew point T_dp in K; negative below it, where water condenses.
 *
 * @example aboveDewPoint.compute({ T: 311.15, T_dp: 322.3 }) // -11.15 K
 */
export const aboveDewPoint = explicit({
  id: "fluids/above-dew-point",
  title: "Distance from the dew point",
  inputs: {
    T: { symbol: "T", kind: "temperature" },
    T_dp: { symbol: "T_dp", kind: "temperature" },
  },
  result: { symbol: "Delta_T_dp", kind: "temperatureDifference" },
  expression: "T - T_dp",
  sources: [{ key: "ashrae-2017", where: "chapter 1, dew point", standing: "from memory" }],
  compute: ({ T, T_dp }) => T - T_dp,
});
