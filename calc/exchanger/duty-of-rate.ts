import { explicit } from "../relation/relation.ts";

/**
 * Heat in W that a stream with the heat-capacity rate C in W/K gives off between two temperatures in K; what warms takes it up,
 * and the result is below zero.
 *
 * @example dutyOfRate.compute({ C: 354.9, T_in: 458.15, T_out: 331.93 }) // 44 795 W
 */
export const dutyOfRate = explicit({
  id: "exchanger/duty-of-rate",
  title: "Heat that a stream gives off",
  inputs: {
    C: { symbol: "C", kind: "capacityRate" },
    T_in: { symbol: "T_in", kind: "temperature" },
    T_out: { symbol: "T_out", kind: "temperature" },
  },
  result: { symbol: "Q", kind: "heatFlow" },
  expression: "C * (T_in - T_out)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, enthalpy rate equations", standing: "from memory" },
  ],
  compute: ({ C, T_in, T_out }) => C * (T_in - T_out),
});
