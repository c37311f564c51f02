import { explicit } from "../relation/relation.ts";

/**
 * Loss coefficient of a pipe that widens in one step, on the speed in the smaller bore: what momentum demands.
 *
 * @example suddenExpansionLoss.compute({ beta_d: 0.76 }) // 0.1784
 */
export const suddenExpansionLoss = explicit({
  id: "flow/sudden-expansion-loss",
  title: "Loss coefficient of a sudden widening",
  inputs: {
    beta_d: { symbol: "beta_d", kind: "ratio" },
  },
  result: { symbol: "K", kind: "ratio" },
  expression: "(1 - beta_d^2)^2",
  sources: [
    {
      key: "white-fluid-mechanics",
      where: "chapter 3, momentum over a sudden expansion",
      standing: "from memory",
    },
  ],
  compute: ({ beta_d }) => (1 - beta_d ** 2) ** 2,
});
