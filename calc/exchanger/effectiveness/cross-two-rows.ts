import { explicit } from "../../relation/relation.ts";
import { rowsEffectiveness } from "./cross-rows.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness (0 to 1) of two tube rows one behind the other, whose water enters and leaves side by side;
 * NTU and R on the air.
 *
 * @example crossTwoRows.compute({ NTU: 2, R: 0.5 }) // 0.7247
 */
export const crossTwoRows = explicit({
  id: "exchanger/effectiveness/cross-two-rows",
  title: "Effectiveness across, two tube rows",
  ...onTheAir,
  expression: "P_rows(NTU, R, 2)",
  sources: [{ key: "schedwill-1968", where: "formula for two rows", standing: "from memory" }],
  compute: ({ NTU, R }) => rowsEffectiveness(NTU, R, 2),
});
