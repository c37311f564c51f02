import { explicit } from "../../relation/relation.ts";
import { rowsEffectiveness } from "./cross-rows.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of four tube rows one behind the other, whose water enters and leaves side by side;
 * NTU and R on the air.
 *
 * @example crossFourRows.compute({ NTU: 2, R: 0.5 }) // 0.7305
 */
export const crossFourRows = explicit({
  id: "exchanger/effectiveness/cross-four-rows",
  title: "Effectiveness across, four tube rows",
  ...onTheAir,
  expression: "P_rows(NTU, R, 4)",
  sources: [{ key: "schedwill-1968", where: "formula for four rows", standing: "from memory" }],
  compute: ({ NTU, R }) => rowsEffectiveness(NTU, R, 4),
});
