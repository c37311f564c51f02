import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of two water passes of one channel each, one behind the other against the air: the
 * air unmixed throughout, the water turning at each end. NTU and R on the air.
 *
 * @example counterCross2.compute({ NTU: 2, R: 0.5 }) // 0.7523
 */
export const counterCross2 = explicit({
  id: "exchanger/effectiveness/counter-cross-2",
  title: "Effectiveness of two passes counter-cross, one channel each",
  ...onTheAir,
  expression: "(1 - 1 / xi_2(Gamma(NTU, 2), R)) / R",
  sources: [
    { key: "nicole-1972", where: "two rows in two passes", standing: "from memory" },
    { key: "thulukkanam-2013", where: "table of multipass counter-cross-flow", standing: "from memory" },
  ],
  // (xi - 1)/(R xi), with e^(n R Gamma) divided out, so that R = 0 is no 0/0 and a large R no overflow.
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 2);
    const h = 1 - K / 2;
    return (h * decayArea(R, 2 * K)) / (h + (K / 2) * Math.exp(-2 * R * K));
  },
});
