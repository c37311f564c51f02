import { numerical } from "../../relation/relation.ts";
import { fieldEffectiveness } from "../field/field-effectiveness.ts";
import { twoPassAccuracy, twoPassEquations, twoPassMethod, twoPassSources } from "../field/two-passes.ts";
import { layouts } from "../layouts.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness of the air, 0 to 1, in cross-flow: two passes of many channels, one behind the other,
 * against the air, with the water mixed in the return header. NTU and R are on the air, 0 or more; with NTU Infinity
 * the limit.
 *
 * From the field of both streams. Throws a DomainError where one is negative, or NTU so large that the field cannot be
 * computed: 2000, divided by R where R is above 1.
 *
 * @example counterCross2Rows.compute({ NTU: 3, R: 1 }) // 0.7125
 */
export const counterCross2Rows = numerical({
  id: "exchanger/effectiveness/counter-cross-2-rows",
  title: "Effectiveness of two passes counter-cross, many channels, water mixed in the return header",
  ...onTheAir,
  tex: twoPassEquations,
  method: twoPassMethod(
    "The water enters the pass that the air meets last, is mixed in the return header, and runs back through the other pass.",
  ),
  sources: twoPassSources,
  accuracy: twoPassAccuracy,
  // In the limit the stream of smaller capacity rate takes on the whole span.
  compute: ({ NTU, R }) =>
    NTU === Number.POSITIVE_INFINITY
      ? Math.min(1, 1 / R)
      : fieldEffectiveness(layouts["counter-cross-2-rows"], NTU, R),
});
