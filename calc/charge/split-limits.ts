import { lowestIn, type Span, spansWithin } from "../numerics/lowest-in.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Kind } from "../quantity/kinds.ts";
import type { Trace } from "../relation/trace.ts";
import type { SplitWork } from "./two-stages.ts";

/** The most that the hardware stands; what is not given is not limited. K, W, and pressure ratios. */
export interface LimitsGiven {
  readonly T_2_most?: SI | undefined;
  readonly T_3_most?: SI | undefined;
  readonly T_4_most?: SI | undefined;
  readonly W_b_most?: SI | undefined;
  readonly r_1_most?: SI | undefined;
  readonly r_2_most?: SI | undefined;
}

/** Where a split stands: its first ratio, what follows from it, and W taken from the crankshaft. */
export interface SplitPlace extends SplitWork {
  readonly r_1: SI;
  readonly W_b: SI;
}

export interface HardwareLimit {
  readonly field: keyof LimitsGiven;
  readonly what: string;
  readonly kind: Kind;
  readonly most: SI;
  readonly of: (place: SplitPlace) => SI;
}

const hardware = [
  {
    field: "T_2_most",
    what: "temperature after the first compressor",
    kind: "temperature",
    of: (place) => place.T_2,
  },
  {
    field: "T_3_most",
    what: "temperature into the second compressor",
    kind: "temperature",
    of: (place) => place.T_3,
  },
  {
    field: "T_4_most",
    what: "temperature after the second compressor",
    kind: "temperature",
    of: (place) => place.T_4,
  },
  { field: "W_b_most", what: "power from the crankshaft", kind: "power", of: (place) => place.W_b },
  { field: "r_1_most", what: "ratio of the first compressor", kind: "ratio", of: (place) => place.r_1 },
  { field: "r_2_most", what: "ratio of the second compressor", kind: "ratio", of: (place) => place.r_2 },
] as const satisfies readonly Omit<HardwareLimit, "most">[];

/** The limits that are given, each above zero; throws a DomainError that names the one that is not. */
export const acceptLimits = (given: LimitsGiven): readonly HardwareLimit[] =>
  hardware.flatMap((limit) => {
    const most = given[limit.field];
    if (most === undefined) return [];
    return [
      {
        ...limit,
        most: accept(limit.field, `The limit of the ${limit.what}`, most, { kind: limit.kind, above: 0 }),
      },
    ];
  });

/** By what part of itself the limit that is passed farthest is passed; negative where all are kept. */
export const excessOver = (limits: readonly HardwareLimit[], place: SplitPlace): number =>
  Math.max(-1, ...limits.map(({ most, of }) => of(place) / most - 1));

/** A note at every limit that the split passes. */
export function noteExcess(limits: readonly HardwareLimit[], place: SplitPlace, trace: Trace): void {
  for (const { field, what, kind, most, of } of limits) {
    if (of(place) <= most) continue;
    trace.note({
      about: field,
      says: `This split passes the limit of the ${what}.`,
      limit: { value: most, kind },
    });
  }
}

/** The splits that can be, and where each stands. */
interface Splits {
  readonly range: Span;
  readonly at: (r_1: number) => SplitPlace;
}

const SEARCH = { parts: 96, tolerance: 1e-9 };

/** The least of a limited quantity, among the splits that keep to `others`; none where no split does. */
function leastOf({ of }: HardwareLimit, others: readonly HardwareLimit[], { range, at }: Splits) {
  const spans = others.length ? spansWithin((r_1) => excessOver(others, at(r_1)), range, SEARCH) : [range];
  const values = spans.map((span) => of(at(lowestIn((r_1) => of(at(r_1)), span, SEARCH))));
  return values.length ? Math.min(...values) : undefined;
}

/**
 * Throws a DomainError, where no split keeps to all limits: at a limit that no split keeps to by itself, with the least that
 * can be had; or, where limits only exclude each other, at the last one that the others leave room for.
 */
export function refuseLimits(limits: readonly HardwareLimit[], splits: Splits): never {
  for (const limit of limits) {
    const value = leastOf(limit, [], splits) ?? Number.NaN;
    refuse(
      value > limit.most,
      limit.field,
      `No split keeps to this limit. The lowest ${limit.what} that any split gives is the bound.`,
      { value, kind: limit.kind },
    );
  }
  for (const limit of limits.toReversed()) {
    const others = limits.filter((other) => other !== limit);
    const value = leastOf(limit, others, splits);
    if (value === undefined) continue;
    refuse(
      true,
      limit.field,
      `Together with the other limits no split is left. With those, the lowest ${limit.what} is the bound.`,
      { value, kind: limit.kind },
    );
  }
  refuse(
    true,
    limits.at(-1)?.field ?? "p_m",
    "The limits exclude each other: no split keeps to them all. More than one of them has to be raised.",
  );
  throw new Error("a refusal has been thrown");
}
