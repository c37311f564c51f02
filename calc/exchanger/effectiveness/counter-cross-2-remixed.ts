import { explicit } from "../../relation/relation.ts";
import { inSeriesCounterOf } from "../in-series-counter.ts";
import { unmixedEffectiveness } from "./cross-unmixed.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of two water passes against the air, many channels each: nothing mixed within a pass,
 * air and water mixed between them. NTU and R on the air.
 *
 * @example counterCross2Remixed.compute({ NTU: 2, R: 0.5 }) // 0.759135583
 */
export const counterCross2Remixed = explicit({
  id: "exchanger/effectiveness/counter-cross-2-remixed",
  title: "Effectiveness of two passes counter-cross, re-mixed between",
  ...onTheAir,
  expression: "1 - (1 - P_x(NTU / 2, R))^2 / (1 - R * P_x(NTU / 2, R)^2)",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, exchangers in series", standing: "derived here" }],
  compute: ({ NTU, R }) => {
    const P_p = unmixedEffectiveness(NTU / 2, R);
    return inSeriesCounterOf(P_p, P_p, R);
  },
});
