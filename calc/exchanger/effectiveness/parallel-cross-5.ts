import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of five water passes of one channel each that lie one behind the other with the
 * air, the hoses the wrong way round: the air unmixed throughout, the water turning at each end. NTU and R on the air.
 *
 * @example parallelCross5.compute({ NTU: 2, R: 0.5 }) // 0.6348
 */
export const parallelCross5 = explicit({
  id: "exchanger/effectiveness/parallel-cross-5",
  title: "Effectiveness of five passes parallel-cross, one channel each",
  ...onTheAir,
  expression: "(1 - xi_5(Gamma(NTU, 5), -R)) / R",
  sources: [
    {
      key: "shah-sekulic-2003",
      where:
        "chapter 3, equations of one row, applied pass by pass: turning the water round turns the sign of its capacity rate, so that the ratio of five passes against the air serves here with -R",
      standing: "derived here",
    },
  ],
  // (1 - xi)/R term by term, so that R = 0 is no 0/0.
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 5);
    const h = 1 - K / 2;
    const one = K * (1 - K * (0.75 - K * (0.5 - 0.125 * K)));
    const oneLoss = K * K * (1 - K * (1 - K * (0.75 - 0.25 * K)) + (R / 2) * K * K * h * h);
    const three = K * (1 - 0.75 * K + K ** 3 / 16);
    const threeLoss = 3 * K * K * h ** 3;
    return (
      one * decayArea(R, K) +
      three * decayArea(R, 3 * K) +
      h ** 4 * decayArea(R, 5 * K) -
      oneLoss * Math.exp(-R * K) -
      threeLoss * Math.exp(-3 * R * K)
    );
  },
});
