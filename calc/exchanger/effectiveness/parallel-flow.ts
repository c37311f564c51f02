import { decayArea } from "../../numerics/decay-area.ts";
import { explicit } from "../../relation/relation.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of air and water that run side by side in the same direction; NTU and R on the air.
 *
 * @example parallelFlow.compute({ NTU: 2, R: 0.5 }) // 0.6335
 */
export const parallelFlow = explicit({
  id: "exchanger/effectiveness/parallel-flow",
  title: "Effectiveness in parallel flow",
  ...onTheAir,
  expression: "(1 - exp(-NTU * (1 + R))) / (1 + R)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 3, table of P-NTU formulas", standing: "from memory" },
  ],
  compute: ({ NTU, R }) => decayArea(1 + R, NTU),
});
