import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of two water passes of one channel each with the air, where a pipe leads the water
 * across so that it runs the same way in both: the air unmixed throughout. NTU and R on the air. Falls again where NTU is
 * large.
 *
 * @example parallelCross2Crossover.compute({ NTU: 2, R: 0.5 }) // 0.6458
 */
export const parallelCross2Crossover = explicit({
  id: "exchanger/effectiveness/parallel-cross-2-crossover",
  title: "Effectiveness of two passes parallel-cross, led across",
  ...onTheAir,
  expression: "(1 - xi_2c(Gamma(NTU, 2), -R)) / R",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, equations of one row, applied pass by pass",
      standing: "derived here",
    },
  ],
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 2);
    return decayArea(R, 2 * K) - K * K * Math.exp(-R * K);
  },
});
