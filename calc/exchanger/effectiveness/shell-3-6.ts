import { implicit } from "../../relation/relation.ts";
import { passesCounterOf } from "../passes-counter.ts";
import { onTheAir } from "./on-the-air.ts";
import { shellEffectiveness } from "./shell-1-2.ts";

/**
 * Temperature effectiveness (0 to 1) of three shells in series, each with two tube passes, the water from shell to shell
 * against the air; NTU and R on the air, NTU of all together.
 *
 * Each side of the equation is a ratio of the differences at the two ends, of all shells and of one.
 *
 * @example shell36.compute({ NTU: 2, R: 0.5 }) // 0.7645
 */
export const shell36 = implicit({
  id: "exchanger/effectiveness/shell-3-6",
  title: "Effectiveness of three shells, six tube passes",
  ...onTheAir,
  residual: "cbrt((1 - R * P) / (1 - P)) - (1 - R * P_shell(NTU / 3, R)) / (1 - P_shell(NTU / 3, R))",
  unknown: "P",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, exchangers in series", standing: "from memory" }],
  compute: ({ NTU, R }) => passesCounterOf(shellEffectiveness(NTU / 3, R), R, 3),
});
