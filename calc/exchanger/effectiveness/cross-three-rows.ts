import { explicit } from "../../relation/relation.ts";
import { rowsEffectiveness } from "./cross-rows.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of three tube rows one behind the other, whose water enters and leaves side by side;
 * NTU and R on the air.
 *
 * @example crossThreeRows.compute({ NTU: 2, R: 0.5 }) // 0.7290
 */
export const crossThreeRows = explicit({
  id: "exchanger/effectiveness/cross-three-rows",
  title: "Effectiveness across, three tube rows",
  ...onTheAir,
  expression: "P_rows(NTU, R, 3)",
  sources: [{ key: "schedwill-1968", where: "formula for three rows", standing: "from memory" }],
  compute: ({ NTU, R }) => rowsEffectiveness(NTU, R, 3),
});
