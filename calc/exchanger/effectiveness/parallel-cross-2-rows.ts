import { numerical } from "../../relation/relation.ts";
import { fieldEffectiveness } from "../field/field-effectiveness.ts";
import { twoPassAccuracy, twoPassEquations, twoPassMethod, twoPassSources } from "../field/two-passes.ts";
import { layouts } from "../layouts.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness of the air, 0 to 1, in cross-flow: two passes of many channels, one behind the other, with
 * the air, with the water mixed in the return header. NTU and R are on the air, 0 or more; with NTU Infinity the limit.
 *
 * From the field of both streams. Throws a DomainError where one is negative, or NTU so large that the field cannot be
 * computed: 2000, divided by R where R is above 1.
 *
 * @example parallelCross2Rows.compute({ NTU: 3, R: 1 }) // 0.4795
 */
export const parallelCross2Rows = numerical({
  id: "exchanger/effectiveness/parallel-cross-2-rows",
  title: "Effectiveness of two passes parallel-cross, many channels, water mixed in the return header",
  ...onTheAir,
  tex: twoPassEquations,
  method: twoPassMethod(
    "The water enters the pass that the air meets first, is mixed in the return header, and runs back through the other pass.",
  ),
  sources: twoPassSources,
  accuracy: twoPassAccuracy,
  // In the limit the first pass heats the water by R, and no further than to the air; the second brings the air to it.
  compute: ({ NTU, R }) =>
    NTU === Number.POSITIVE_INFINITY
      ? 1 - Math.min(1, R)
      : fieldEffectiveness(layouts["parallel-cross-2-rows"], NTU, R),
});
