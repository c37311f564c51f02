import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of three water passes of one channel each, one behind the other against the air: the
 * air unmixed throughout, the water turning at each end. NTU and R on the air.
 *
 * @example counterCross3.compute({ NTU: 2, R: 0.5 }) // 0.7646
 */
export const counterCross3 = explicit({
  id: "exchanger/effectiveness/counter-cross-3",
  title: "Effectiveness of three passes counter-cross, one channel each",
  ...onTheAir,
  expression: "(1 - 1 / xi_3(Gamma(NTU, 3), R)) / R",
  sources: [
    { key: "nicole-1972", where: "three rows in three passes", standing: "from memory" },
    { key: "thulukkanam-2013", where: "table of multipass counter-cross-flow", standing: "from memory" },
  ],
  // (xi - 1)/(R xi), with e^(n R Gamma) divided out, so that R = 0 is no 0/0 and a large R no overflow.
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 3);
    const h = 1 - K / 2;
    const d = Math.exp(-2 * R * K);
    const one = K * (1 - K / 4);
    const loss = K * K * h;
    const rise = h * h * decayArea(R, 3 * K) + (one * decayArea(R, K) - loss) * d;
    return rise / (h * h + (one - R * loss) * d);
  },
});
