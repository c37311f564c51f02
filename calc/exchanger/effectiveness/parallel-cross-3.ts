import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of three water passes of one channel each that lie one behind the other with the
 * air, the hoses the wrong way round: the air unmixed throughout, the water turning at each end. NTU and R on the air.
 *
 * @example parallelCross3.compute({ NTU: 2, R: 0.5 }) // 0.6374
 */
export const parallelCross3 = explicit({
  id: "exchanger/effectiveness/parallel-cross-3",
  title: "Effectiveness of three passes parallel-cross, one channel each",
  ...onTheAir,
  expression: "(1 - xi_3(Gamma(NTU, 3), -R)) / R",
  sources: [
    {
      key: "shah-sekulic-2003",
      where:
        "chapter 3, equations of one row, applied pass by pass: turning the water round turns the sign of its capacity rate, so that the ratio of three passes against the air serves here with -R",
      standing: "derived here",
    },
  ],
  // (1 - xi)/R term by term, so that R = 0 is no 0/0.
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 3);
    const h = 1 - K / 2;
    return K * (1 - K / 4) * decayArea(R, K) + h * h * decayArea(R, 3 * K) - K * K * h * Math.exp(-R * K);
  },
});
