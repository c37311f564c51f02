import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of four water passes of one channel each, one behind the other against the air: the
 * air unmixed throughout, the water turning at each end. NTU and R on the air.
 *
 * @example counterCross4.compute({ NTU: 2, R: 0.5 }) // 0.7689
 */
export const counterCross4 = explicit({
  id: "exchanger/effectiveness/counter-cross-4",
  title: "Effectiveness of four passes counter-cross, one channel each",
  ...onTheAir,
  expression: "(1 - 1 / xi_4(Gamma(NTU, 4), R)) / R",
  sources: [
    {
      key: "nicole-1972",
      where:
        "four rows in four passes; the print was not seen, and a transcription in a public library of programs is wrong: this one is confirmed by a solution in two dimensions",
      standing: "derived here",
    },
  ],
  // (xi - 1)/(R xi), with e^(n R Gamma) divided out, so that R = 0 is no 0/0 and a large R no overflow.
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 4);
    const h = 1 - K / 2;
    const d = Math.exp(-2 * R * K);
    const two = K * h;
    const loss = 2 * two * two;
    const four = h ** 3;
    const rise = four * decayArea(R, 4 * K) + (two * decayArea(R, 2 * K) - loss) * d;
    return rise / (four + (two - R * loss + (K / 2) * (1 - (K / 2) * h) * d) * d);
  },
});
