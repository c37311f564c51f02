import { explicit } from "../relation/relation.ts";

/**
 * Cooling of the air over the most that the water could do, 0 to 1; temperatures in K.
 *
 * @example temperatureEffectiveness.compute({ T_in: 405.57, T_out: 321.78, T_w_in: 298.15 }) // 0.78
 */
export const temperatureEffectiveness = explicit({
  id: "exchanger/temperature-effectiveness",
  title: "Temperature effectiveness",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
    T_w_in: { symbol: "T_w_in", kind: "temperature" },
  },
  result: { symbol: "P", kind: "fraction" },
  expression: "(T_in - T_out) / (T_in - T_w_in)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, temperature effectiveness", standing: "from memory" },
  ],
  compute: ({ T_in, T_out, T_w_in }) => (T_in - T_out) / (T_in - T_w_in),
});
