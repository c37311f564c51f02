import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of two water passes of one channel each against the air, where a pipe leads the water
 * across so that it runs the same way in both: the air unmixed throughout. NTU and R on the air.
 *
 * @example counterCross2Crossover.compute({ NTU: 2, R: 0.5 }) // 0.7559
 */
export const counterCross2Crossover = explicit({
  id: "exchanger/effectiveness/counter-cross-2-crossover",
  title: "Effectiveness of two passes counter-cross, led across",
  ...onTheAir,
  expression: "(1 - 1 / xi_2c(Gamma(NTU, 2), R)) / R",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, equations of one row, applied pass by pass",
      standing: "derived here",
    },
  ],
  // (xi - 1)/(R xi), with e^(2 R Gamma) divided out, so that R = 0 is no 0/0 and a large R no overflow.
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 2);
    const loss = K * K * Math.exp(-R * K);
    return (decayArea(R, 2 * K) - loss) / (1 - R * loss);
  },
});
