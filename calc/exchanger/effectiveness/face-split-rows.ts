import { explicit } from "../../relation/relation.ts";
import { unmixedEffectiveness } from "./cross-unmixed.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of two water passes of many channels each that share the face, so that each half of
 * the air meets one of them; the whole air taken together after the cooler, the water mixed between the passes. NTU and R
 * on the whole air.
 *
 * @example faceSplitRows.compute({ NTU: 2, R: 0.5 }) // 0.717937
 */
export const faceSplitRows = explicit({
  id: "exchanger/effectiveness/face-split-rows",
  title: "Effectiveness of two passes side by side, many channels each",
  ...onTheAir,
  expression: "P_x(NTU, R / 2) - R / 4 * P_x(NTU, R / 2)^2",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, balance of both streams, applied pass by pass",
      standing: "derived here",
    },
  ],
  compute: ({ NTU, R }) => {
    const P_p = unmixedEffectiveness(NTU, R / 2);
    return P_p * (1 - (R * P_p) / 4);
  },
});
