import { explicit } from "../../relation/relation.ts";
import { passesCounterOf } from "../passes-counter.ts";
import { onTheAir } from "./on-the-air.ts";
import { shellEffectiveness } from "./shell-1-2.ts";

/**
 * Temperature effectiveness (0 to 1) of two shells in series, each with two tube passes, the water from shell to shell
 * against the air; NTU and R on the air, NTU of all together.
 *
 * @example shell24.compute({ NTU: 2, R: 0.5 }) // 0.7522
 */
export const shell24 = explicit({
  id: "exchanger/effectiveness/shell-2-4",
  title: "Effectiveness of two shells, four tube passes",
  ...onTheAir,
  expression: "1 - (1 - P_shell(NTU / 2, R))^2 / (1 - R * P_shell(NTU / 2, R)^2)",
  sources: [{ key: "shah-sekulic-2003", where: "chapter 3, exchangers in series", standing: "from memory" }],
  compute: ({ NTU, R }) => passesCounterOf(shellEffectiveness(NTU / 2, R), R, 2),
});
