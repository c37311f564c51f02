import { explicit } from "../../relation/relation.ts";

/**
 * Area in m² of a rectangular channel from its sides in m.
 *
 * @example channelArea.compute({ a_ch: 0.08, b_ch: 0.0025 }) // 0.0002 m²
 */
export const channelArea = explicit({
  id: "exchanger/film/channel-area",
  title: "Area of a rectangular channel",
  inputs: {
    a_ch: { symbol: "a_ch", kind: "length" },
    b_ch: { symbol: "b_ch", kind: "length" },
  },
  result: { symbol: "A_ch", kind: "area" },
  expression: "a_ch * b_ch",

  sources: [{ key: "shah-london-1978", where: "chapter VII, area of a rectangle", standing: "derived here" }],

  compute: ({ a_ch, b_ch }) => a_ch * b_ch,
});
