import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { type BestSplit, type Costs, placeAt } from "./best-split.ts";
import type { compareSplit } from "./split-comparisons.ts";
import type { HardwareLimit } from "./split-limits.ts";
import type { Pair } from "./two-stages.ts";

/** Within this part of the range an optimum stands at its end. */
const AT_END = 1e-6;

/** How the best split was found, and what holds it. */
export function noteBest(
  { range, allowed, r_1 }: BestSplit,
  found: {
    readonly pair: Pair;
    readonly costs: Costs;
    readonly limits: readonly HardwareLimit[];
    readonly what: "work" | "cost";
  },
  trace: Trace,
): void {
  const { pair, costs, limits, what } = found;
  const near = AT_END * (range.to - range.from);
  trace.note({
    about: "r_1",
    says: `The split was found by search: the ${what} was computed for ratios of the first compressor over the whole range, and then ever closer round the lowest. The working shows the split that was found.`,
  });
  if (r_1 - range.from < near || range.to - r_1 < near) {
    trace.note({
      about: "r_1",
      says: `The least ${what} is at the end of the range: the ${r_1 - range.from < near ? "first" : "second"} compressor does next to nothing there. By the ${what} alone a second compressor is not worth its place here.`,
    });
    return;
  }
  const isHeld = allowed && (r_1 - allowed.from < near || allowed.to - r_1 < near);
  if (!isHeld) return;
  const place = placeAt(pair, costs, r_1);
  const binding = limits.reduce<HardwareLimit | undefined>(
    (a, b) => (a && a.of(place) / a.most >= b.of(place) / b.most ? a : b),
    undefined,
  );
  if (binding)
    trace.note({
      about: "r_1",
      says: `Less ${what} would be possible beyond a limit: the ${binding.what} holds the split here, at the bound.`,
      limit: { value: binding.most, kind: binding.kind },
    });
}

/** What a reader would ask next. */
export function noteComparisons(
  { W_single, Delta_p_even, r_1_rule }: ReturnType<typeof compareSplit>,
  { W_c12, isCooled }: { readonly W_c12: SI; readonly isCooled: boolean },
  trace: Trace,
): void {
  if (W_single < W_c12)
    trace.note({
      about: "W_c12",
      says: "The better compressor alone would need less power. Two are right only where one cannot reach the pressure, or gets too hot.",
    });
  if (!isCooled) return;
  if (Delta_p_even === undefined)
    trace.note({
      about: "Delta_p_even",
      says: "At this split the cooler between saves no work, whatever its loss.",
    });
  if (r_1_rule === undefined)
    trace.note({
      about: "r_1_rule",
      says: "By the rule one of the compressors would have to do more than all, so by it one is best left out.",
    });
}
