import { explicit } from "../relation/relation.ts";

/**
 * Part of a cooler's duty that comes from condensing.
 *
 * @example latentShare.compute({ Q_l: 32270, Q: 182660 }) // 0.17667
 */
export const latentShare = explicit({
  id: "exchanger/latent-share",
  title: "Part of the duty that comes from condensing",
  inputs: {
    Q_l: { symbol: "Q_l", kind: "heatFlow" },
    Q: { symbol: "Q", kind: "heatFlow" },
  },
  result: { symbol: "x_l", kind: "fraction" },
  expression: "Q_l / Q",
  sources: [{ key: "ashrae-2017", where: "chapter 1, sensible and latent heat", standing: "from memory" }],
  compute: ({ Q_l, Q }) => Q_l / Q,
});
