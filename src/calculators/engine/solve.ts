import { type EveryRoot, everyRoot, type Nearest } from "../../../calc/numerics/every-root.ts";
import { DomainError, type Limit, type SI } from "../../../calc/quantity/domain-error.ts";
import { plain } from "../../../calc/relation/trace.ts";
import type { Calculator, Field } from "./calculator.ts";
import { type Given, heard } from "./evaluate.ts";
import { choicesOf, freeInputs, isShown } from "./shown.ts";

/** A calculator asked backwards: which `input` gives this `result` the value `target`, with all else as given? */
export interface Question {
  readonly calculator: Calculator;
  readonly given: Given;
  readonly result: string;
  readonly input: string;
  readonly target: SI;
}

/** What was looked at: so many values of the input, both ends among them. */
export interface LookedAt {
  readonly points: number;
  readonly from: SI;
  readonly to: SI;
}

/** Why the result goes no nearer to what is wanted. */
export type Barrier =
  /** It turns back there. */
  | { readonly at: "turn" }
  /** The field accepts no value beyond. */
  | { readonly at: "limit" }
  /** The model refuses what lies beyond, with this sentence. */
  | { readonly at: "refusal"; readonly says: string; readonly limit: Limit | undefined }
  /** The result has no meaning beyond. */
  | { readonly at: "no value" }
  /** The input is counted, and nothing lies between whole numbers. */
  | { readonly at: "whole" };

export interface Found extends LookedAt {
  readonly kind: "found";
  /** Values of the input, in rising order. */
  readonly roots: readonly SI[];
  /** Spans in which every value looked at does. */
  readonly stretches: readonly { readonly from: SI; readonly to: SI }[];
}

export interface Best extends LookedAt {
  readonly kind: "best";
  /** The result that comes nearest, and the input there. */
  readonly value: SI;
  readonly at: SI;
  /** The side of the target that the result stays on; `jumps` where it is on both and nowhere between. */
  readonly stays: "below" | "above" | "jumps";
  readonly barrier: Barrier;
}

export type Refusal =
  /** There is no such number in sight, or it is the barometer. */
  | "not asked"
  | "target"
  /** The result is the same whatever the input. */
  | "no influence"
  /** No value of the input has a result; `refusal` says why the present one has none. */
  | "nothing";

export interface Refused {
  readonly kind: "refused";
  readonly why: Refusal;
  readonly refusal?: { readonly says: string; readonly limit: Limit | undefined };
}

export type Solved = Found | Best | Refused;

/** How long a scan may take, and the clock that says so: both in milliseconds. */
export interface Patience {
  readonly budget: number;
  readonly now: () => number;
}

const patient: Patience = { budget: 25, now: () => performance.now() };

/** Steps of the coarsest scan, and how often it is made twice as fine. */
const COARSEST = 24;
const DOUBLINGS = 3;
/** From this ratio of its limits on, a field is looked at in equal ratios and not in equal steps. */
const DECADES = 100;
/** A target may lie this many times the span of all results beyond them before it is far away. */
const FAR = 100;
/** A result that moves by less than this part of itself does not depend on the input. */
const STILL = 1e-12;

/** A place at a part `t` of the way: in equal ratios over decades, ever closer towards a zero, else in equal steps. */
function along([from, to]: readonly [SI, SI], t: number): SI {
  if (t === 1) return to;
  if (from > 0 && to / from > DECADES) return from * (to / from) ** t;
  if (from === 0) return to * t ** 3;
  return from + (to - from) * t;
}

/** A whole number does where the result is as wanted to this part of it. */
const AS_WANTED = 1e-7;

/** The places of a scan: over the limits of a field, and as many again over what is usual in it; all where it is counted. */
function places({ limits, typical, whole }: Field, steps: number): readonly SI[] {
  if (whole) {
    const first = Math.ceil(limits[0]);
    return Array.from({ length: Math.floor(limits[1]) - first + 1 }, (_, i) => first + i);
  }
  const parts = Array.from({ length: steps + 1 }, (_, i) => i / steps);
  return [limits, typical ?? limits].flatMap((span) => parts.map((t) => along(span, t)));
}

/** The result as a function of the input alone; not finite where there is none. */
function resultOf({ calculator, given, result, input }: Question): (x: SI) => SI {
  const base = heard(calculator, given);
  return (x) => {
    try {
      return calculator.model({ ...base, [input]: x }, plain)[result] ?? Number.NaN;
    } catch (error) {
      if (error instanceof DomainError) return Number.NaN;
      throw error;
    }
  };
}

/** The model's own sentence at a value of the input, where it refuses that. */
function refusalAt({ calculator, given, input }: Question, x: SI) {
  try {
    calculator.model({ ...heard(calculator, given), [input]: x }, plain);
    return undefined;
  } catch (error) {
    if (error instanceof DomainError) return { says: error.message, limit: error.limit };
    throw error;
  }
}

/** What `everyRoot` gives, of an input that is counted. */
function everyWhole(f: (x: SI) => number, points: readonly SI[], scale: number): EveryRoot {
  const samples = points.map((x) => ({ x, y: f(x) })).filter(({ y }) => Number.isFinite(y));
  const ys = samples.map(({ y }) => y);
  return {
    roots: samples.filter(({ y }) => Math.abs(y) <= AS_WANTED * scale).map(({ x }) => x),
    stretches: [],
    nearest: samples.reduce((best, one) => (Math.abs(one.y) < Math.abs(best.y) ? one : best)),
    lowest: Math.min(...ys),
    highest: Math.max(...ys),
  };
}

function barrierOf(question: Question, field: Field, { x, beyond }: Nearest): Barrier {
  if (beyond !== undefined) {
    const refusal = refusalAt(question, beyond);
    return refusal ? { at: "refusal", ...refusal } : { at: "no value" };
  }
  if (field.whole) return { at: "whole" };
  return { at: field.limits.includes(x) ? "limit" : "turn" };
}

/**
 * Every value of one input at which one result is as wanted, as far as a scan of the input's limits shows; else the
 * nearest that the result comes, and why it goes no nearer.
 *
 * Up to 200 and some values are looked at, fewer where the model is slow: the answer says how many. A root is as near as
 * the model's own figures allow: mostly to a billionth of the result. The input's present value does not matter, but that
 * it is one of those looked at.
 */
export function solve(question: Question, { budget, now }: Patience = patient): Solved {
  const { calculator, given, input, target } = question;
  const choices = choicesOf(given);
  const field = freeInputs(calculator, choices).find(([id]) => id === input)?.[1];
  const { results } = calculator;
  const result = Object.hasOwn(results, question.result) ? results[question.result] : undefined;
  if (!field || !result || !isShown(calculator, result.when, choices))
    return { kind: "refused", why: "not asked" };
  if (!Number.isFinite(target)) return { kind: "refused", why: "target" };

  const valueAt = resultOf(question);
  const known = new Map<SI, SI>();
  const look = (x: SI): SI => {
    const value = known.get(x) ?? valueAt(x);
    known.set(x, value);
    return value;
  };
  const [from, to] = field.limits;
  const present = given[input];
  if (typeof present === "number" && present >= from && present <= to) look(present);
  const start = now();
  for (let [doubling, pace] = [0, 0]; doubling <= DOUBLINGS; doubling++) {
    const fresh = places(field, COARSEST * 2 ** doubling).filter((x) => !known.has(x));
    const before = now();
    if (doubling > 0 && before - start + pace * fresh.length > budget) break;
    for (const x of fresh) look(x);
    pace = (now() - before) / Math.max(1, fresh.length);
  }

  const points = [...known.keys()].sort((a, b) => a - b);
  const lookedAt: LookedAt = { points: points.length, from, to };
  const values = points.map(look).filter(Number.isFinite);
  if (values.length === 0) {
    const refusal = typeof present === "number" ? refusalAt(question, present) : undefined;
    return { kind: "refused", why: "nothing", ...(refusal && { refusal }) };
  }
  const [lowest, highest] = [Math.min(...values), Math.max(...values)];
  if (values.length > 1 && highest - lowest <= STILL * Math.max(Math.abs(lowest), Math.abs(highest)))
    return { kind: "refused", why: "no influence" };

  const search = (wanted: SI): EveryRoot =>
    (field.whole ? everyWhole : everyRoot)(
      (x) => (known.get(x) ?? valueAt(x)) - wanted,
      points,
      Math.abs(wanted),
    );
  // From far away all results look alike, so the nearest is first sought from less far.
  const span = highest - lowest;
  const closer = Math.min(Math.max(target, lowest - FAR * span), highest + FAR * span);
  const sighted = search(closer);
  const isReached = sighted.roots.length + sighted.stretches.length > 0;
  const all = isReached && closer !== target ? search(target) : sighted;
  if (all.roots.length > 0 || all.stretches.length > 0)
    return { kind: "found", roots: all.roots, stretches: all.stretches, ...lookedAt };
  const nearest = all.nearest as Nearest;
  const stays = all.lowest > 0 ? "above" : all.highest < 0 ? "below" : "jumps";
  return {
    kind: "best",
    value: valueAt(nearest.x),
    at: nearest.x,
    stays,
    barrier: barrierOf(question, field, nearest),
    ...lookedAt,
  };
}
