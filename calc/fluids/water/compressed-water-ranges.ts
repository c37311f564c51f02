import { constants } from "../../constants.ts";
import type { Range } from "../../relation/relation.ts";

/** The span in which the equations for water under pressure hold. */
export const compressedWaterRanges: readonly Range[] = [
  {
    input: "T",
    from: 273.15,
    to: 623.15,
    says: "The equations for water under pressure do not hold at a temperature past the bound.",
  },
  {
    input: "p",
    from: constants.p_t.value,
    to: 100e6,
    says: "The equations for water under pressure do not hold at a pressure past the bound.",
  },
];
