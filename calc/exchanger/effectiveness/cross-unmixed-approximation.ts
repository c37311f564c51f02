import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * The textbooks' approximation of one pass across with both streams unmixed, for comparison only; NTU and R on the air,
 * which has to be the stream of smaller heat-capacity rate, R 0 to 1.
 *
 * @example crossUnmixedApproximation.compute({ NTU: 1, R: 1 }) // 0.4685
 */
export const crossUnmixedApproximation = explicit({
  id: "exchanger/effectiveness/cross-unmixed-approximation",
  title: "Effectiveness across, both streams unmixed, approximation",
  ...onTheAir,
  expression: "1 - exp(NTU^0.22 / R * (exp(-R * NTU^0.78) - 1))",
  sources: [
    {
      key: "incropera-dewitt",
      where: "chapter 11, table of effectiveness relations",
      standing: "from memory",
    },
  ],
  accuracy:
    "For 0.2 to 10 transfer units and R from 0.05 to 1 between 3.8 % too low, at NTU 0.3 and R 1, and 1.1 % too high, at NTU 2.8 and R 0.45.",
  ranges: [
    {
      input: "R",
      from: 0,
      to: 1,
      says: "The approximation is meant for the stream of smaller heat-capacity rate, so that R stays within the bound.",
    },
  ],
  compute: ({ NTU, R }) => -Math.expm1(-(NTU ** 0.22) * decayArea(R, NTU ** 0.78)),
});
