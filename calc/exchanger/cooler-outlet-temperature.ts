import { explicit } from "../relation/relation.ts";

/**
 * Air temperature in K after a cooler of temperature effectiveness P (0 to 1) with water entering at T_w_in in K.
 *
 * @example coolerOutletTemperature.compute({ T_in: 405.57, P: 0.78, T_w_in: 298.15 }) // 321.8 K
 */
export const coolerOutletTemperature = explicit({
  id: "exchanger/cooler-outlet-temperature",
  title: "Temperature after the cooler",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    P: { symbol: "P", kind: "fraction" },
    T_w_in: { symbol: "T_w_in", kind: "temperature" },
  },
  result: { symbol: "T_out", kind: "temperature" },
  expression: "T_in - P * (T_in - T_w_in)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, temperature effectiveness", standing: "from memory" },
  ],
  compute: ({ T_in, P, T_w_in }) => T_in - P * (T_in - T_w_in),
});
