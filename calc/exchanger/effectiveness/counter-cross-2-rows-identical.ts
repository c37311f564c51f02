import { numerical } from "../../relation/relation.ts";
import { fieldEffectiveness } from "../field/field-effectiveness.ts";
import { twoPassAccuracy, twoPassEquations, twoPassMethod, twoPassSources } from "../field/two-passes.ts";
import { layouts } from "../layouts.ts";
import { onTheAir } from "./on-the-air.ts";

/**
 * Temperature effectiveness of the air, 0 to 1, in cross-flow: two passes of many channels, one behind the other,
 * against the air, with every channel in the same place along the air in both. NTU and R are on the air, 0 or more;
 * with NTU Infinity the limit.
 *
 * From the field of both streams. Throws a DomainError where one is negative, or NTU so large that the field cannot be
 * computed: 2000, divided by R where R is above 1.
 *
 * @example counterCross2RowsIdentical.compute({ NTU: 3, R: 1 }) // 0.7167
 */
export const counterCross2RowsIdentical = numerical({
  id: "exchanger/effectiveness/counter-cross-2-rows-identical",
  title: "Effectiveness of two passes counter-cross, many channels, channels kept in order",
  ...onTheAir,
  tex: twoPassEquations,
  method: twoPassMethod(
    "The water enters the pass that the air meets last. Each channel runs back through the other pass in the same place along the air, the first as the first.",
  ),
  sources: twoPassSources,
  accuracy: twoPassAccuracy,
  // In the limit the stream of smaller capacity rate takes on the whole span.
  compute: ({ NTU, R }) =>
    NTU === Number.POSITIVE_INFINITY
      ? Math.min(1, 1 / R)
      : fieldEffectiveness(layouts["counter-cross-2-rows-identical"], NTU, R),
});
