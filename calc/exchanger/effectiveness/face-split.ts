import { explicit } from "../../relation/relation.ts";
import { oneRowEffectiveness } from "./cross-one-row.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of two water passes of one channel each that share the face, so that each half of the
 * air meets one of them; the whole air taken together after the cooler. NTU and R on the whole air.
 *
 * It is that of a single pass of one tube row, whatever the number of passes side by side.
 *
 * @example faceSplit.compute({ NTU: 2, R: 0.5 }) // 0.702
 */
export const faceSplit = explicit({
  id: "exchanger/effectiveness/face-split",
  title: "Effectiveness of two passes side by side, one channel each",
  ...onTheAir,
  expression: "P_row(NTU, R / 2) - R / 4 * P_row(NTU, R / 2)^2",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, equations of one row, applied pass by pass",
      standing: "derived here",
    },
  ],
  compute: ({ NTU, R }) => {
    const P_p = oneRowEffectiveness(NTU, R / 2);
    return P_p * (1 - (R * P_p) / 4);
  },
});
