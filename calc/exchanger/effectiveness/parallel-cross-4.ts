import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of four water passes of one channel each that lie one behind the other with the
 * air, the hoses the wrong way round: the air unmixed throughout, the water turning at each end. NTU and R on the air.
 * Falls again where NTU is large.
 *
 * @example parallelCross4.compute({ NTU: 2, R: 0.5 }) // 0.6355
 */
export const parallelCross4 = explicit({
  id: "exchanger/effectiveness/parallel-cross-4",
  title: "Effectiveness of four passes parallel-cross, one channel each",
  ...onTheAir,
  expression: "(1 - xi_4(Gamma(NTU, 4), -R)) / R",
  sources: [
    {
      key: "shah-sekulic-2003",
      where:
        "chapter 3, equations of one row, applied pass by pass: turning the water round turns the sign of its capacity rate, so that the ratio of four passes against the air serves here with -R",
      standing: "derived here",
    },
  ],
  // (1 - xi)/R term by term, so that R = 0 is no 0/0.
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 4);
    const h = 1 - K / 2;
    const two = K * h;
    return two * decayArea(R, 2 * K) + h ** 3 * decayArea(R, 4 * K) - 2 * two * two * Math.exp(-2 * R * K);
  },
});
