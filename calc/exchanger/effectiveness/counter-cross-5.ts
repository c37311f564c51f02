import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness (0 to 1) of five water passes of one channel each, one behind the other against the air: the
 * air unmixed throughout, the water turning at each end. NTU and R on the air.
 *
 * @example counterCross5.compute({ NTU: 2, R: 0.5 }) // 0.7709
 */
export const counterCross5 = explicit({
  id: "exchanger/effectiveness/counter-cross-5",
  title: "Effectiveness of five passes counter-cross, one channel each",
  ...onTheAir,
  expression: "(1 - 1 / xi_5(Gamma(NTU, 5), R)) / R",
  sources: [
    { key: "nicole-1972", where: "five rows in five passes", standing: "from memory" },
    { key: "thulukkanam-2013", where: "table of multipass counter-cross-flow", standing: "from memory" },
  ],
  // (xi - 1)/(R xi), with e^(n R Gamma) divided out, so that R = 0 is no 0/0 and a large R no overflow.
  compute: ({ NTU, R }) => {
    const K = passShareOf(NTU, 5);
    const h = 1 - K / 2;
    const d = Math.exp(-2 * R * K);
    const one = K * (1 - K * (0.75 - K * (0.5 - 0.125 * K)));
    const oneLoss = K * K * (1 - K * (1 - K * (0.75 - 0.25 * K)) - (R / 2) * K * K * h * h);
    const three = K * (1 - 0.75 * K + K ** 3 / 16);
    const threeLoss = 3 * K * K * h ** 3;
    const five = h ** 4;
    const rise =
      five * decayArea(R, 5 * K) +
      (three * decayArea(R, 3 * K) - threeLoss + (one * decayArea(R, K) - oneLoss) * d) * d;
    return rise / (five + (three - R * threeLoss + (one - R * oneLoss) * d) * d);
  },
});
