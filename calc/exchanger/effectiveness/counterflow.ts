import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/** The same as a plain function. Written so that nothing is lost near R = 1, where the formula is 0/0. */
export const counterflowEffectiveness = (NTU: number, R: number): number =>
  R < 1 ? 1 / (1 + Math.exp(-NTU * (1 - R)) / decayArea(1 - R, NTU)) : 1 / (1 + 1 / decayArea(R - 1, NTU));

/**
 * Temperature effectiveness (0 to 1) of air and water that run against each other all the way; NTU and R on the air.
 *
 * @example counterflow.compute({ NTU: 2, R: 0.5 }) // 0.7746
 */
export const counterflow = explicit({
  id: "exchanger/effectiveness/counterflow",
  title: "Effectiveness in counterflow",
  ...onTheAir,
  expression: "(1 - exp(-NTU * (1 - R))) / (1 - R * exp(-NTU * (1 - R)))",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, table of P-NTU formulas", standing: "from memory" },
  ],
  compute: ({ NTU, R }) => counterflowEffectiveness(NTU, R),
});
