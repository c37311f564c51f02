import { explicit } from "../relation/relation.ts";

/**
 * Loss of pressure that the air meets in two unequal halves, as the mean over the air, over that with even air. `n_p` is the
 * exponent of the loss over the flow.
 *
 * @example unevenLossHalves.compute({ omega_1: 1.2, omega_2: 0.8, n_p: 2 }) // 1.12
 */
export const unevenLossHalves = explicit({
  id: "exchanger/uneven-loss-halves",
  title: "Pressure loss with two unequal halves",
  inputs: {
    omega_1: { symbol: "omega_1", kind: "ratio" },
    omega_2: { symbol: "omega_2", kind: "ratio" },
    n_p: { symbol: "n_p", kind: "ratio" },
  },
  result: { symbol: "Phi", kind: "ratio" },
  expression: "(omega_1^(n_p + 1) + omega_2^(n_p + 1)) / 2",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 12, flow maldistribution between parallel passages",
      standing: "derived here",
    },
  ],
  compute: ({ omega_1, omega_2, n_p }) => (omega_1 ** (n_p + 1) + omega_2 ** (n_p + 1)) / 2,
});
