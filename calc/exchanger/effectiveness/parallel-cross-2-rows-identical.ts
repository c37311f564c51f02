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
 * the air, with every channel in the same place along the air in both. NTU and R are on the air, 0 or more; with NTU
 * Infinity the limit.
 *
 * Throws a DomainError where one is negative, R above 1000, or NTU above 2000, divided by R where R is above 1.
 *
 * @example parallelCross2RowsIdentical.compute({ NTU: 3, R: 1 }) // 0.4926
 */
export const parallelCross2RowsIdentical = numerical({
  id: "exchanger/effectiveness/parallel-cross-2-rows-identical",
  title: "Effectiveness of two passes parallel-cross, many channels, channels kept in order",
  ...onTheAir,
  tex: lines(
    String.raw`P = P_\mathrm{p} + P_\mathrm{b} - \frac{1}{R} \int_0^1 T_\mathrm{w}(\xi)\,T_\mathrm{w}(1 - \xi)\,\mathrm{d}\xi`,
    takenByBoth(),
    airOfBank(),
    waterOfBank(),
    banks(),
    functionJ(),
  ),
  method: parallelMethod(
    "The water enters the bank in front, which the air meets first. Each channel runs back through the other bank in the same place along the air, the first as the first.",
  ),
  sources: twoPassSources,
  accuracy: twoPassAccuracy,
  // In the limit the first pass leaves each channel as cold as it came or as hot as the air, and the second lets the air
  // have what the last channels bring.
  compute: ({ NTU, R }) =>
    NTU === Number.POSITIVE_INFINITY
      ? Math.min(1, Math.max(0, 1 / R - 1))
      : linkedPassesParallel(NTU, R, "identical"),
});
