import { explicit } from "../relation/relation.ts";

/**
 * The loss coefficients of entrance, bends and other parts that belong to one bore, added.
 *
 * @example coefficientsInSeries.compute({ K_ent: 0.5, K_b: 0.6762, K_o: 0.2 }) // 1.3762
 */
export const coefficientsInSeries = explicit({
  id: "flow/coefficients-in-series",
  title: "Loss coefficients of one bore",
  inputs: {
    K_ent: { symbol: "K_ent", kind: "ratio" },
    K_b: { symbol: "K_b", kind: "ratio" },
    K_o: { symbol: "K_o", kind: "ratio" },
  },
  result: { symbol: "K", kind: "ratio" },
  expression: "K_ent + K_b + K_o",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, minor losses in series", standing: "from memory" },
  ],
  compute: ({ K_ent, K_b, K_o }) => K_ent + K_b + K_o,
});
