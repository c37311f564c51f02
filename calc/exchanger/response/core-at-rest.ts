import { explicit } from "../../relation/relation.ts";

/**
 * Temperature in K at which the metal of a core comes to rest between air that enters at T_in and a coolant that enters at T_w_in, both in
 * K: nearer to the one that exchanges more.
 *
 * @example coreAtRest.compute({ E_a: 343, T_in: 458.15, E_w: 1107, T_w_in: 295.15 }) // 333.71 K
 */
export const coreAtRest = explicit({
  id: "exchanger/response/core-at-rest",
  title: "Temperature of a core at rest",
  inputs: {
    E_a: { symbol: "E_a", kind: "capacityRate" },
    T_in: { symbol: "T_in", kind: "temperature" },
    E_w: { symbol: "E_w", kind: "capacityRate" },
    T_w_in: { symbol: "T_w_in", kind: "temperature" },
  },
  result: { symbol: "T_core_end", kind: "temperature" },
  expression: "(E_a * T_in + E_w * T_w_in) / (E_a + E_w)",
  sources: [{ key: "incropera-dewitt", where: "chapter 5, lumped capacitance", standing: "derived here" }],
  compute: ({ E_a, T_in, E_w, T_w_in }) => (E_a * T_in + E_w * T_w_in) / (E_a + E_w),
});
