import { DomainError, type Limit, type SI } from "../../../calc/quantity/domain-error.ts";
import { type Note, recording } from "../../../calc/relation/trace.ts";
import { type Calculator, type Field, isChoice } from "./calculator.ts";
import { type Given, heard } from "./evaluate.ts";
import { type Point, pointsAlong } from "./points-along.ts";

/** How results move with one input, all else as given; with a family, once for each value of a second input. */
export interface SweepQuestion {
  readonly calculator: Calculator;
  readonly given: Given;
  readonly along: string;
  readonly from: SI;
  readonly to: SI;
  readonly results: readonly string[];
  readonly family?: { readonly input: string; readonly values: readonly SI[] } | undefined;
  /** Even steps and both ends; 41 where left out. A counted input takes its whole numbers instead. */
  readonly count?: number;
}

export interface SweptCurve {
  readonly result: string;
  /** The value of the family's input. */
  readonly member: SI | undefined;
  /** Those without a value are not finite. */
  readonly points: readonly Point[];
}

/** A part of the way about which there is something to say. */
export interface Stretch {
  readonly what: "refused" | "no value" | "note";
  /** An input, a result, or the words of a place. */
  readonly about: string;
  readonly says: string;
  readonly limit: Limit | undefined;
  readonly from: SI;
  readonly to: SI;
  readonly member: SI | undefined;
}

export interface Swept {
  readonly curves: readonly SweptCurve[];
  readonly stretches: readonly Stretch[];
}

type Remark = Pick<Stretch, "what" | "about" | "says" | "limit">;

interface Look {
  readonly values: Readonly<Record<string, SI | undefined>>;
  readonly remarks: ReadonlyMap<string, Remark>;
}

/** Halvings of a step in which a remark begins or ends: to a thousandth of it. */
const HALVINGS = 10;

/** More whole numbers than this are not swept. */
export const MOST_WHOLE = 200;

const keyOf = ({ what, about, says }: Remark): string => `${what}\n${about}\n${says}`;

const asRemark = ({ about, says, limit }: Note): Remark => ({ what: "note", about, says, limit });

/** The model at one place, with what it has to say there. */
function lookAt(calculator: Calculator, given: Given, results: readonly string[]): Look {
  const remarks = new Map<string, Remark>();
  const add = (remark: Remark) => remarks.set(keyOf(remark), remark);
  const trace = recording();
  try {
    const values = calculator.model(heard(calculator, given), trace);
    for (const note of trace.notes) add(asRemark(note));
    for (const id of results)
      if (values[id] === undefined)
        add({ what: "no value", about: id, says: "It has no meaning here.", limit: undefined });
    return { values, remarks };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    add({ what: "refused", about: error.field, says: error.message, limit: error.limit });
    return { values: {}, remarks };
  }
}

/** Where a remark stands along the way: each run of places that have it, its ends found by halving. */
function stretchesOf(
  xs: readonly SI[],
  look: (x: SI) => Look,
  isCounted: boolean,
  member: SI | undefined,
): readonly Stretch[] {
  const keys = new Set(xs.flatMap((x) => [...look(x).remarks.keys()]));
  const edge = (key: string, inside: SI, outside: SI): SI => {
    let [end, beyond] = [inside, outside];
    for (let i = 0; i < HALVINGS && !isCounted; i++) {
      const middle = (end + beyond) / 2;
      if (look(middle).remarks.has(key)) end = middle;
      else beyond = middle;
    }
    return end;
  };
  return [...keys].flatMap((key) => {
    const found: Stretch[] = [];
    const has = (x: SI | undefined) => x !== undefined && look(x).remarks.has(key);
    for (const [i, x] of xs.entries()) {
      if (!has(x) || has(xs[i - 1])) continue;
      let last = i;
      while (has(xs[last + 1])) last += 1;
      const [before, after] = [xs[i - 1], xs[last + 1]];
      const from = before === undefined ? x : edge(key, x, before);
      const to = after === undefined ? (xs[last] as SI) : edge(key, xs[last] as SI, after);
      const remark = look(from).remarks.get(key) as Remark;
      found.push({ ...remark, from, to, member });
    }
    return found;
  });
}

/**
 * Results along one input, between two of its values, and what the model says on the way. Never throws for what the model
 * refuses: the curves have a gap there, and a stretch that says why.
 */
export function sweep({ calculator, given, along, results, family, count, ...ends }: SweepQuestion): Swept {
  const input = calculator.inputs[along];
  const isCounted = !!input && !isChoice(input) && input.whole === true;
  const whole = Array.from(
    { length: isCounted ? Math.floor(ends.to) - Math.ceil(ends.from) + 1 : 0 },
    (_, i) => Math.ceil(ends.from) + i,
  );
  const parts = (family?.values ?? [undefined]).map((member) => {
    const own = family && member !== undefined ? { ...given, [family.input]: member } : given;
    const known = new Map<SI, Look>();
    const look = (x: SI): Look => {
      const before = known.get(x);
      if (before) return before;
      const found = lookAt(calculator, { ...own, [along]: x }, results);
      known.set(x, found);
      return found;
    };
    const curves = results.map((result): SweptCurve => {
      const value = (x: SI): SI => look(x).values[result] ?? Number.NaN;
      const points = isCounted
        ? whole.map((x): Point => [x, value(x)])
        : pointsAlong(value, ends.from, ends.to, count);
      return { result, member, points };
    });
    const xs = [...known.keys()].sort((a, b) => a - b);
    return { curves, stretches: stretchesOf(xs, look, isCounted, member) };
  });
  return {
    curves: parts.flatMap(({ curves }) => curves),
    stretches: parts.flatMap(({ stretches }) => stretches),
  };
}

/** A sweep reaches this part of a value to either side of it. */
const REACH = 0.5;
/** A sweep of a temperature reaches so far to either side, in K. */
const REACH_OF_TEMPERATURE = 40;

/** The span of a field that is swept until another is asked for: around its value, and within what the field takes. */
export function spanAround({ kind, limits }: Field, value: SI): readonly [SI, SI] {
  const reach = kind === "temperature" ? REACH_OF_TEMPERATURE : REACH * Math.abs(value);
  const [from, to] = [Math.max(limits[0], value - reach), Math.min(limits[1], value + reach)];
  return to > from ? [from, to] : limits;
}

/** So many values from one end to the other, both among them. */
export const evenly = (from: SI, to: SI, count: number): readonly SI[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / Math.max(1, count - 1));
