import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of two water passes of one channel each that lie one behind the other with the air,
 * the hoses the wrong way round: the air unmixed throughout, the water turning at the end. NTU and R on the air. Falls
 * again where NTU is large.
 *
 * @example parallelCross2.compute({ NTU: 2, R: 0.5 }) // 0.6409
 */
export const parallelCross2 = explicit({
  id: "exchanger/effectiveness/parallel-cross-2",
  title: "Effectiveness of two passes parallel-cross, one channel each",
  ...onTheAir,
  expression: "1 / R * (1 - 0.5 * Gamma(NTU, 2)) * (1 - exp(-2 * R * Gamma(NTU, 2)))",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, equations of one row, applied pass by pass",
      standing: "derived here",
    },
  ],
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 2);
    return (1 - K / 2) * decayArea(R, 2 * K);
  },
});
