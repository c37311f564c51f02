import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/** The same as a plain function. */
export const oneRowEffectiveness = (NTU: number, R: number): number => decayArea(R, -Math.expm1(-NTU));

/**
 * Temperature effectiveness (0 to 1) of one tube row across the air: air unmixed, water mixed; NTU and R on the air.
 *
 * @example crossOneRow.compute({ NTU: 2, R: 0.5 }) // 0.702
 */
export const crossOneRow = explicit({
  id: "exchanger/effectiveness/cross-one-row",
  title: "Effectiveness across, one tube row",
  ...onTheAir,
  name: "P_row",
  expression: "(1 - exp(-R * (1 - exp(-NTU)))) / R",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, table of P-NTU formulas, one fluid mixed",
      standing: "from memory",
    },
  ],
  compute: ({ NTU, R }) => oneRowEffectiveness(NTU, R),
});
