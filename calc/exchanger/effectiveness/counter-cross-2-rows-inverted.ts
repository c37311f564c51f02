import { numerical } from "../../relation/relation.ts";
import { linkedPassesCounter } from "./linked-passes-counter.ts";
import { onTheAir } from "./on-the-air.ts";
import { banks, counterMethod, functionJ, lines, twoPassAccuracy, twoPassSources } from "./two-pass-words.ts";

/**
 * Temperature effectiveness of the air, 0 to 1, in cross-flow: two passes of many channels, one behind the other,
 * against the air, with the channels in nested bends, so that the first in one pass is the last in the other. NTU and R
 * are on the air, 0 or more; with NTU Infinity the limit.
 *
 * Throws a DomainError where one is negative, R above 1000, or NTU above 2000, divided by R where R is above 1.
 *
 * @example counterCross2RowsInverted.compute({ NTU: 3, R: 1 }) // 0.7080
 */
export const counterCross2RowsInverted = numerical({
  id: "exchanger/effectiveness/counter-cross-2-rows-inverted",
  title: "Effectiveness of two passes counter-cross, many channels, nested bends",
  ...onTheAir,
  tex: lines(
    String.raw`P = 1 - \int_0^1 J(N,\, N_\mathrm{w} \eta)\,T(\eta)\,\mathrm{d}\eta`,
    String.raw`T(\eta) = J(N,\, N_\mathrm{w} \eta) + N \int_0^1 k(N \xi,\, N_\mathrm{w} \eta)\,T_\mathrm{w}(\xi)\,\mathrm{d}\xi`,
    String.raw`T_\mathrm{w}(\xi) = N_\mathrm{w} \int_0^1 k(N \xi,\, N_\mathrm{w} \eta)\,T(\eta)\,\mathrm{d}\eta`,
    banks(),
    functionJ(),
  ),
  method: counterMethod(
    "The water enters the bank behind, which the air meets last. Each channel turns in a bend around the ones inside it and runs back in the opposite place along the air, the first as the last.",
  ),
  sources: twoPassSources,
  accuracy: twoPassAccuracy,
  // In the limit the stream of smaller capacity rate takes on the whole span.
  compute: ({ NTU, R }) =>
    NTU === Number.POSITIVE_INFINITY ? Math.min(1, 1 / R) : linkedPassesCounter(NTU, R, "inverted"),
});
