import { explicit } from "../../relation/relation.ts";
import { unmixedEffectiveness } from "./cross-unmixed.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of two water passes with the air, the hoses the wrong way round, many channels each:
 * nothing mixed within a pass, air and water mixed between them. NTU and R on the air. Falls again where NTU is large.
 *
 * @example parallelCross2Remixed.compute({ NTU: 2, R: 0.5 }) // 0.645361990
 */
export const parallelCross2Remixed = explicit({
  id: "exchanger/effectiveness/parallel-cross-2-remixed",
  title: "Effectiveness of two passes parallel-cross, re-mixed between",
  ...onTheAir,
  expression: "2 * P_x(NTU / 2, R) - (1 + R) * P_x(NTU / 2, R)^2",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, exchangers in series", standing: "derived here" }],
  compute: ({ NTU, R }) => {
    const P_p = unmixedEffectiveness(NTU / 2, R);
    return P_p * (2 - (1 + R) * P_p);
  },
});
