import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a smooth bend, the friction along its own length with it.
 *
 * @example bendLoss.compute({ K_w: 0.14367, K_sep: 0.08173 }) // 0.2254
 */
export const bendLoss = explicit({
  id: "flow/bend-loss",
  title: "Loss coefficient of a smooth bend",
  inputs: {
    K_w: { symbol: "K_w", kind: "ratio" },
    K_sep: { symbol: "K_sep", kind: "ratio" },
  },
  result: { symbol: "K_1", kind: "ratio" },
  expression: "K_w + K_sep",
  sources: [
    { key: "fluids", where: "fittings, rounded bend", standing: "open reference read" },
    { key: "rennels-hudson-2012", where: "bends", standing: "from memory" },
  ],
  accuracy: "20 to 50 % between handbooks",
  compute: ({ K_w, K_sep }) => K_w + K_sep,
});
