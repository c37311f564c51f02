import { MOST_OF_ONE } from "../compression/accept-ratio.ts";
import { lowestIn, type Span, spansWithin } from "../numerics/lowest-in.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain } from "../relation/trace.ts";
import { excessOver, type HardwareLimit, refuseLimits, type SplitPlace } from "./split-limits.ts";
import { type Pair, rangeOfFirst, splitAt } from "./two-stages.ts";

/** How a split is judged: what a watt of each shaft costs, and which part of it the crankshaft gives, per watt. */
export interface Costs {
  readonly chi_1: SI;
  readonly chi_2: SI;
  readonly belt_1: SI;
  readonly belt_2: SI;
}

export interface BestSplit {
  /** Ratios of the first compressor that can be: neither compressor expands, the second stays below `MOST_OF_ONE`. */
  readonly range: Span;
  /** The part of the range that keeps to the limits and holds the best; none where no split keeps to them. */
  readonly allowed: Span | undefined;
  readonly r_1: SI;
  /** Around the best, all splits whose cost is within `FLAT` of it, whatever the limits. */
  readonly flat: Span;
}

/** A hundredth more work is hardly to be measured. Chosen here. */
export const FLAT = 0.01;
/** Narrow valleys at the ends of the range are as wide as a few hundredths of it. */
const PARTS = 96;
const TOLERANCE = 1e-9;

/**
 * The split of least cost that keeps to the limits, by a scan of the whole range and a closer search round its lowest point,
 * to about 1e-8 of the ratio. Where no split keeps to the limits it throws a DomainError, or leaves them out if it `mayPass` them.
 */
export function bestSplit(
  pair: Pair,
  costs: Costs,
  limits: readonly HardwareLimit[],
  mayPass: boolean,
): BestSplit {
  const range = rangeOfFirst(pair, MOST_OF_ONE);
  const known = new Map<number, SplitPlace & { readonly cost: number }>();
  const at = (r_1: number) => {
    const before = known.get(r_1);
    if (before) return before;
    const place = placeAt(pair, costs, r_1);
    known.set(r_1, place);
    return place;
  };
  const cost = (r_1: number) => at(r_1).cost;
  const search = { parts: PARTS, tolerance: TOLERANCE };

  const excess = (r_1: number) => excessOver(limits, at(r_1));
  const spans: Span[] = limits.length ? [...spansWithin(excess, range, search)] : [range];
  if (spans.length === 0) {
    // A part that is narrower than the scan is steep still lies round the least excess.
    const nearest = lowestIn(excess, range, search);
    if (excess(nearest) <= 0) {
      const part = (range.to - range.from) / PARTS;
      const near = { from: Math.max(nearest - part, range.from), to: Math.min(nearest + part, range.to) };
      spans.push(...spansWithin(excess, near, search), { from: nearest, to: nearest });
    } else if (!mayPass) refuseLimits(limits, { at, range });
  }
  const searched = spans.length ? spans : [range];
  const candidates = searched.map((span) => ({ span, r_1: lowestIn(cost, span, search) }));
  const best = candidates.reduce((a, b) => (cost(b.r_1) < cost(a.r_1) ? b : a));
  const most = (1 + FLAT) * cost(best.r_1);
  const flat = spansWithin((r_1) => cost(r_1) - most, range, search).find(
    ({ from, to }) => best.r_1 >= from && best.r_1 <= to,
  );
  const allowed = spans.length ? best.span : undefined;
  return { range, allowed, r_1: best.r_1, flat: flat ?? { from: best.r_1, to: best.r_1 } };
}

/** Where the pair stands with its first compressor at r_1, and what that costs in W. */
export function placeAt(pair: Pair, costs: Costs, r_1: SI): SplitPlace & { readonly cost: SI } {
  const split = splitAt(pair, r_1, plain);
  const { r_2, T_2, T_3, T_4, W_c1, W_c2 } = split;
  return {
    r_1,
    r_2,
    T_2,
    T_3,
    T_4,
    W_c1,
    W_c2,
    W_b: costs.belt_1 * W_c1 + costs.belt_2 * W_c2,
    cost: costs.chi_1 * W_c1 + costs.chi_2 * W_c2,
  };
}
