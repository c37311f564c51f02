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
 * Temperature effectiveness of the air, 0 to 1, in cross-flow: two passes of many channels, one behind the other, with
 * the air, with the water mixed in the return header. NTU and R are on the air, 0 or more; with NTU Infinity the limit.
 *
 * Throws a DomainError where one is negative, R above 1000, or NTU above 2000, divided by R where R is above 1.
 *
 * @example parallelCross2Rows.compute({ NTU: 3, R: 1 }) // 0.4795
 */
export const parallelCross2Rows = numerical({
  id: "exchanger/effectiveness/parallel-cross-2-rows",
  title: "Effectiveness of two passes parallel-cross, many channels, water mixed in the return header",
  ...onTheAir,
  tex: lines(
    String.raw`P = P_\mathrm{p}\,(1 - R\,P_\mathrm{p}) + P_\mathrm{b}`,
    takenByBoth(),
    airOfBank(),
    banks(),
    functionJ(),
  ),
  method: headerMethod(
    "The water enters the bank in front, which the air meets first, is mixed in the return header, and runs back through the bank behind.",
  ),
  sources: twoPassSources,
  accuracy: twoPassAccuracy,
  compute: ({ NTU, R }) => {
    // In the limit the first pass heats the water by R, and no further than to the air; the second brings the air to it.
    if (NTU === Number.POSITIVE_INFINITY) return 1 - Math.min(1, R);
    const behind = takenBehind(airLeaving(halfOf(NTU, R)));
    const P_p = unmixedEffectiveness(NTU / 2, R);
    return P_p * (1 - R * P_p) + behind;
  },
});
