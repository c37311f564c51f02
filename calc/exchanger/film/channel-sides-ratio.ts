import { explicit } from "../../relation/relation.ts";

/**
 * The short side of a rectangular channel over its long side, both in m.
 *
 * @example channelSidesRatio.compute({ a_ch: 0.08, b_ch: 0.0025 }) // 0.03125
 */
export const channelSidesRatio = explicit({
  id: "exchanger/film/channel-sides-ratio",
  title: "Ratio of the sides of a rectangular channel",
  inputs: {
    a_ch: { symbol: "a_ch", kind: "length" },
    b_ch: { symbol: "b_ch", kind: "length" },
  },
  result: { symbol: "alpha_r", kind: "fraction" },
  expression: "b_ch / a_ch",

  sources: [{ key: "shah-london-1978", where: "chapter VII, rectangular ducts", standing: "from memory" }],

  compute: ({ a_ch, b_ch }) => b_ch / a_ch,
});
