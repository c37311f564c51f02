import { explicit } from "../relation/relation.ts";

/**
 * Temperature in K of the wall where the hottest air meets the hottest water: between both, nearer to the one that conducts better.
 * Neither the wall nor dirt is counted, so that the water side of a real wall is colder.
 *
 * @example hotWallTemperature.compute({ UA_a: 1220.33, T_in: 458.15, UA_film: 1309.76, T_w_out: 307.056 }) // 379.93 K
 */
export const hotWallTemperature = explicit({
  id: "exchanger/hot-wall-temperature",
  title: "Temperature of the wall at the hot end",
  inputs: {
    UA_a: { symbol: "UA_a", kind: "conductance" },
    T_in: { symbol: "T_in", kind: "temperature" },
    UA_film: { symbol: "UA_film", kind: "conductance" },
    T_w_out: { symbol: "T_w_out", kind: "temperature" },
  },
  result: { symbol: "T_wall", kind: "temperature" },
  expression: "(UA_a * T_in + UA_film * T_w_out) / (UA_a + UA_film)",

  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, wall temperature", standing: "from memory" }],

  compute: ({ UA_a, T_in, UA_film, T_w_out }) => (UA_a * T_in + UA_film * T_w_out) / (UA_a + UA_film),
});
