import { explicit } from "../relation/relation.ts";

/**
 * Flow in kg/s from a cold supply at T_cold that, mixed with warm water at T_warm, makes m kg/s at T_w_in, all in K: the warm water
 * is what comes back from the cooler, or a second supply.
 *
 * @example mixedInFlow.compute({ m: 2, T_warm: 317.99, T_w_in: 311.91, T_cold: 295.15 }) // 0.5324 kg/s
 */
export const mixedInFlow = explicit({
  id: "exchanger/mixed-in-flow",
  title: "Cold water that is mixed in",
  inputs: {
    m: { symbol: "m", kind: "massFlow" },
    T_warm: { symbol: "T_warm", kind: "temperature" },
    T_w_in: { symbol: "T_w_in", kind: "temperature" },
    T_cold: { symbol: "T_cold", kind: "temperature" },
  },
  result: { symbol: "m_fresh", kind: "massFlow" },
  expression: "m * (T_warm - T_w_in) / (T_warm - T_cold)",

  sources: [
    { key: "cengel-boles", where: "chapter 5, mixing chambers, one heat capacity", standing: "from memory" },
  ],
  accuracy: "1 %",
  compute: ({ m, T_warm, T_w_in, T_cold }) => (m * (T_warm - T_w_in)) / (T_warm - T_cold),
});
