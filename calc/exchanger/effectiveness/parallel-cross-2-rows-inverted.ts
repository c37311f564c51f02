import { numerical } from "../../relation/relation.ts";
import { linkedPassesParallel } from "./linked-passes-parallel.ts";
import { onTheAir } from "./on-the-air.ts";
import {
  airOfBank,
  banks,
  functionJ,
  lines,
  parallelMethod,
  takenByBoth,
  twoPassAccuracy,
  twoPassSources,
  waterOfBank,
} from "./two-pass-words.ts";

/**
 * Temperature effectiveness of the air, 0 to 1, in cross-flow: two passes of many channels, one behind the other, with
 * the air, with the channels in nested bends, so that the first in one pass is the last in the other. NTU and R are on
 * the air, 0 or more; with NTU Infinity the limit.
 *
 * Throws a DomainError where one is negative, R above 1000, or NTU above 2000, divided by R where R is above 1.
 *
 * @example parallelCross2RowsInverted.compute({ NTU: 3, R: 1 }) // 0.4662
 */
export const parallelCross2RowsInverted = numerical({
  id: "exchanger/effectiveness/parallel-cross-2-rows-inverted",
  title: "Effectiveness of two passes parallel-cross, many channels, nested bends",
  ...onTheAir,
  tex: lines(
    String.raw`P = P_\mathrm{p} + P_\mathrm{b} - \frac{1}{R} \int_0^1 T_\mathrm{w}(\xi)^2\,\mathrm{d}\xi`,
    takenByBoth(),
    airOfBank(),
    waterOfBank(),
    banks(),
    functionJ(),
  ),
  method: parallelMethod(
    "The water enters the bank in front, which the air meets first. Each channel turns in a bend around the ones inside it and runs back in the opposite place along the air, the first as the last.",
  ),
  sources: twoPassSources,
  accuracy: twoPassAccuracy,
  // In the limit the channels that the first pass heated come last on the way of the air, and heat all of it again.
  compute: ({ NTU, R }) =>
    NTU === Number.POSITIVE_INFINITY ? Number(R === 0) : linkedPassesParallel(NTU, R, "inverted"),
});
