import { explicit } from "../../relation/relation.ts";

/**
 * Hydraulic diameter in m of a rectangular channel from its sides in m.
 *
 * @example channelDiameter.compute({ a_ch: 0.08, b_ch: 0.0025 }) // 0.0048485 m
 */
export const channelDiameter = explicit({
  id: "exchanger/film/channel-diameter",
  title: "Hydraulic diameter of a rectangular channel",
  inputs: {
    a_ch: { symbol: "a_ch", kind: "length" },
    b_ch: { symbol: "b_ch", kind: "length" },
  },
  result: { symbol: "D_h", kind: "length" },
  expression: "2 * a_ch * b_ch / (a_ch + b_ch)",

  sources: [{ key: "shah-london-1978", where: "chapter VII, rectangular ducts", standing: "from memory" }],

  compute: ({ a_ch, b_ch }) => (2 * a_ch * b_ch) / (a_ch + b_ch),
});
