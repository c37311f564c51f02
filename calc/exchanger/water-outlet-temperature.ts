import { explicit } from "../relation/relation.ts";

/**
 * Water temperature in K after the cooler, from the inlets of air and water in K, P and R on the air.
 *
 * @example waterOutletTemperature.compute({ T_in: 400, T_w_in: 300, P: 0.8, R: 0.25 }) // 320 K
 */
export const waterOutletTemperature = explicit({
  id: "exchanger/water-outlet-temperature",
  title: "Temperature of the water after the cooler",
  inputs: {
    T_in: { symbol: "T_in", kind: "temperature" },
    T_w_in: { symbol: "T_w_in", kind: "temperature" },
    P: { symbol: "P", kind: "fraction" },
    R: { symbol: "R", kind: "ratio" },
  },
  result: { symbol: "T_w_out", kind: "temperature" },
  expression: "T_w_in + R * P * (T_in - T_w_in)",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, P-NTU method", standing: "from memory" }],
  compute: ({ T_in, T_w_in, P, R }) => T_w_in + R * P * (T_in - T_w_in),
});
