import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of one pass across with both streams mixed throughout; NTU and R on the air. Falls
 * again where NTU is large.
 *
 * @example crossMixed.compute({ NTU: 2, R: 0.5 }) // 0.6908
 */
export const crossMixed = explicit({
  id: "exchanger/effectiveness/cross-mixed",
  title: "Effectiveness across, both streams mixed",
  ...onTheAir,
  expression: "1 / (1 / (1 - exp(-NTU)) + R / (1 - exp(-R * NTU)) - 1 / NTU)",
  sources: [
    {
      key: "shah-sekulic-2003",
      where: "chapter 3, table of P-NTU formulas, both fluids mixed",
      standing: "from memory",
    },
  ],
  compute: ({ NTU, R }) =>
    NTU === Infinity ? 1 / (1 + R) : NTU / (1 / decayArea(NTU, 1) + 1 / decayArea(R * NTU, 1) - 1),
});
