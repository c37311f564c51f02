import { numerical } from "../../relation/relation.ts";
import { airLeaving, halfOf, takenBehind } from "./bank-response.ts";
import { unmixedEffectiveness } from "./cross-unmixed.ts";
import { onTheAir } from "./on-the-air.ts";
import {
  airOfBank,
  banks,
  functionJ,
  headerMethod,
  lines,
  takenByBoth,
  twoPassAccuracy,
  twoPassSources,
} from "./two-pass-words.ts";

/**
 * Temperature effectiveness of the air, 0 to 1, in cross-flow: two passes of many channels, one behind the other,
 * against the air, with the water mixed in the return header. NTU and R are on the air, 0 or more; with NTU Infinity
 * the limit.
 *
 * Throws a DomainError where one is negative, R above 1000, or NTU above 2000, divided by R where R is above 1.
 *
 * @example counterCross2Rows.compute({ NTU: 3, R: 1 }) // 0.7125
 */
export const counterCross2Rows = numerical({
  id: "exchanger/effectiveness/counter-cross-2-rows",
  title: "Effectiveness of two passes counter-cross, many channels, water mixed in the return header",
  ...onTheAir,
  tex: lines(
    String.raw`P = P_\mathrm{p} + \frac{P_\mathrm{b}\,(1 - R\,P_\mathrm{p})}{1 - R\,P_\mathrm{p} + R\,P_\mathrm{b}}`,
    takenByBoth(),
    airOfBank(),
    banks(),
    functionJ(),
  ),
  method: headerMethod(
    "The water enters the bank behind, which the air meets last, is mixed in the return header, and runs back through the bank in front.",
  ),
  sources: twoPassSources,
  accuracy: twoPassAccuracy,
  compute: ({ NTU, R }) => {
    // In the limit the stream of smaller capacity rate takes on the whole span.
    if (NTU === Number.POSITIVE_INFINITY) return Math.min(1, 1 / R);
    const behind = takenBehind(airLeaving(halfOf(NTU, R)));
    const P_p = unmixedEffectiveness(NTU / 2, R);
    const cold = 1 - R * P_p;
    return P_p + (behind * cold) / (cold + R * behind);
  },
});
