import { lastBits } from "../../../calc/quantity/accept.ts";
import { DomainError, type SI } from "../../../calc/quantity/domain-error.ts";
import { readQuantity } from "../../../calc/quantity/read.ts";
import { plain } from "../../../calc/relation/trace.ts";
import {
  combineAll,
  type Propagated,
  type Sloped,
  slopesOfAll,
} from "../../../calc/uncertainty/propagate.ts";
import type { Correlation, Measurands, Reading, Spread, Values } from "../../../calc/uncertainty/readings.ts";
import { barometerField } from "./barometer.ts";
import { type Calculator, type Field, isChoice } from "./calculator.ts";
import { type Entries, readEntry, type Surroundings } from "./entry.ts";
import { type Evaluation, type Given, heard } from "./evaluate.ts";
import { BAROMETER, type Meaning, type PlusMinus, usual, WANTED } from "./plus-minus.ts";
import { choicesOf, isShown, listedResults } from "./shown.ts";
import { readWanted } from "./want.ts";

/** A result that is held, and the input that is found for it. */
interface Held {
  readonly input: string;
  readonly result: string;
  readonly target: SI;
}

/** What is uncertain in a state of a calculator. Plain data, so that it can be sent to where draws are made. */
export interface Uncertain {
  /** What the model hears. */
  readonly given: Given;
  readonly readings: Readonly<Record<string, Reading>>;
  readonly correlations: readonly Correlation[];
  /** The reading that is the barometer, and how each input that was read on a gauge moves with it: mostly one for one. */
  readonly barometer?: string | undefined;
  readonly onGauge: Readonly<Record<string, number>>;
  readonly held?: Held | undefined;
}

const spreadOf: Readonly<Record<Meaning, { readonly by: number; readonly spread: Spread }>> = {
  standard: { by: 1, spread: "normal" },
  expanded: { by: 2, spread: "normal" },
  // JCGM 100:2008, equation 7; from memory.
  limits: { by: Math.sqrt(3), spread: "rectangular" },
};

/** The correlation of a pair, or the sentence that says why there is none. */
export function readPair(typed: string): { readonly r: number } | { readonly says: string } {
  const reading = readQuantity(typed, "ratio", "1");
  if (!reading.ok) return { says: reading.says };
  if (!(Math.abs(reading.value) <= 1)) return { says: "A correlation lies between −1 and 1." };
  return { r: reading.value };
}

/** How each input in sight that was read on a gauge moves with the barometer: it is read again with another one. */
function gaugesOf(calculator: Calculator, entries: Entries, around: Surroundings): Record<string, number> {
  const { barometer } = around;
  const step = 1e-3 * barometer.value;
  const moved: Surroundings = { ...around, barometer: { ...barometer, value: barometer.value + step } };
  const found: Record<string, number> = {};
  for (const [id, input] of Object.entries(calculator.inputs)) {
    const entry = entries.fields[id];
    if (isChoice(input) || input.barometer || !entry || entry.typed === null) continue;
    if (!isShown(calculator, input.when, entries.choices)) continue;
    const [here, there] = [readEntry(input, entry, around), readEntry(input, entry, moved)];
    if (!here.ok || !there.ok || here.value === there.value) continue;
    found[id] = (there.value - here.value) / step;
  }
  return found;
}

/** The field in sight that is the site's barometer. */
const barometerInSight = (calculator: Calculator, choices: Entries["choices"]): string | undefined =>
  Object.entries(calculator.inputs).find(
    ([, input]) => !isChoice(input) && input.barometer && isShown(calculator, input.when, choices),
  )?.[0];

/** The result that is held in a state, where there is one that can be read. */
function heldIn(calculator: Calculator, { want, choices }: Entries, around: Surroundings) {
  if (!want?.isHeld) return undefined;
  const sought = calculator.inputs[want.input];
  const isListed = listedResults(calculator, choices).some(([id]) => id === want.result);
  const reading = readWanted(calculator, want, around);
  if (!reading.ok || !isListed || !sought || isChoice(sought) || sought.whole) return undefined;
  if (!isShown(calculator, sought.when, choices)) return undefined;
  const held: Held = { input: want.input, result: want.result, target: reading.value };
  return { held, within: reading.within };
}

/**
 * What is uncertain in a state: what stands behind ± in its fields, counted ones left out; the barometer, where a field is it
 * or something was read on a gauge; and a wanted result that has a ± of its own. Pairs that cannot be read or of which one is
 * exact are left out.
 */
export function uncertainIn(
  calculator: Calculator,
  entries: Entries,
  { given, within }: Pick<Evaluation, "given" | "within">,
  around: Surroundings,
): Uncertain {
  const { means, together }: PlusMinus = entries.pm ?? usual;
  const { by, spread } = spreadOf[means];
  const found = heldIn(calculator, entries, around);
  const readings: Record<string, Reading> = {};
  const read = (id: string, value: SI, width: SI | undefined) => {
    if (width !== undefined && width > 0) readings[id] = { value, u: width / by, spread };
  };
  for (const [id, width] of Object.entries(within)) {
    const value = given[id];
    const { whole } = calculator.inputs[id] as Field;
    if (typeof value === "number" && !whole && id !== found?.held.input) read(id, value, width);
  }
  const onGauge = gaugesOf(calculator, entries, around);
  const ownField = barometerInSight(calculator, entries.choices);
  if (ownField === undefined && Object.keys(onGauge).length > 0)
    read(BAROMETER, around.barometer.value, around.barometer.within);
  if (found) read(WANTED, found.held.target, found.within);
  const barometer = [ownField, BAROMETER].find((id) => id !== undefined && id in readings);
  const correlations = together.flatMap(({ a, b, typed }) => {
    const pair = readPair(typed);
    return "r" in pair && a !== b && a in readings && b in readings ? [{ a, b, r: pair.r }] : [];
  });
  return {
    given: heard(calculator, given),
    readings,
    correlations,
    barometer,
    onGauge,
    held: found?.held,
  };
}

/** The fields whose values are drawn, by the id of their reading. */
const fieldOf = (calculator: Calculator, id: string): Field | undefined =>
  id === BAROMETER
    ? barometerField
    : id === WANTED
      ? undefined
      : (calculator.inputs[id] as Field | undefined);

/**
 * All listed results as functions of the readings, and of whatever other input is named with them. They throw a DomainError
 * where the model does, and where a value is past what its field accepts.
 */
function directly(calculator: Calculator, { given, readings, barometer, onGauge }: Uncertain): Measurands {
  const listed = listedResults(calculator, choicesOf(given)).map(([id]) => id);
  const nominal = barometer === undefined ? 0 : (readings[barometer]?.value ?? 0);
  return (x) => {
    const all: Record<string, SI | string> = { ...given };
    for (const id in x) if (id !== WANTED && id !== BAROMETER) all[id] = x[id] as SI;
    const risen = barometer === undefined ? 0 : (x[barometer] ?? nominal) - nominal;
    if (risen !== 0) for (const id in onGauge) all[id] = (all[id] as SI) + risen * (onGauge[id] as number);
    for (const id of [...Object.keys(x), ...(risen === 0 ? [] : Object.keys(onGauge))]) {
      const field = fieldOf(calculator, id);
      const value = (id === BAROMETER ? x[id] : all[id]) as SI;
      if (!field) continue;
      const [least, most] = field.limits;
      if (value < least - lastBits(least) || value > most + lastBits(most))
        throw new DomainError(id, "That is past what is accepted.");
    }
    const values = calculator.model(all, plain);
    const found: Record<string, SI | undefined> = {};
    for (const id of listed) found[id] = values[id];
    return found;
  };
}

export interface Propagation {
  /** Of each listed result that has a value and slopes. */
  readonly results: Readonly<Record<string, Propagated>>;
  /** Of the input that is found for a held result. */
  readonly found?: Propagated | undefined;
}

/** A name that no result has, for the input that is found. */
const FOUND = " found";

/**
 * Slopes along which a result stays as held, from those with its input standing still: the input moves by
 * dx/du = −(∂f/∂u)/(∂f/∂x), and takes the other results along. Undefined where the input does not move the result.
 */
function alongHeld({ here, by }: Sloped, { input, result, target }: Held, x: SI): Sloped | undefined {
  const { [input]: against, ...others } = by;
  const slope = against?.[result];
  if (!against || !slope) return undefined;
  const turned = Object.entries(others).map(([id, own]) => {
    const moved = id === WANTED ? 1 / slope : own[result] === undefined ? undefined : -own[result] / slope;
    const total: Record<string, SI | undefined> = { [FOUND]: moved };
    for (const y in here) {
      const [still, along] = [id === WANTED ? 0 : own[y], against[y]];
      total[y] =
        still === undefined || along === undefined || moved === undefined ? undefined : still + along * moved;
    }
    total[result] = id === WANTED ? 1 : 0;
    return [id, total] as const;
  });
  return { here: { ...here, [result]: target, [FOUND]: x }, by: Object.fromEntries(turned) };
}

/**
 * The uncertainty of every listed result, to first order. While a result is held, all else is what it is with the input
 * following. Throws a DomainError at `correlation` for pairs that contradict each other, and where the model has no value.
 */
export function propagateIn(calculator: Calculator, uncertain: Uncertain): Propagation {
  const { readings, correlations, held, given } = uncertain;
  const f = directly(calculator, uncertain);
  if (!held) return { results: combineAll(slopesOfAll(f, readings, correlations), readings, correlations) };
  const x = given[held.input] as SI;
  const sloped = slopesOfAll(f, { ...readings, [held.input]: { value: x, u: 0 } }, correlations);
  const along = alongHeld(sloped, held, x);
  if (!along)
    throw new DomainError(held.input, "The field that is to be found does not move the result that is held.");
  const { [FOUND]: found, ...results } = combineAll(along, readings, correlations);
  return { results, found };
}

/** A held result counts as met at this part of itself. */
const MET = 1e-9;
const MOST_STEPS = 30;

/**
 * The listed results as draws are taken: where a result is held, its input is found anew for each, by secants from where it
 * stands. Throws a DomainError where the model does, and where nothing is found.
 */
export function measurandsOf(calculator: Calculator, uncertain: Uncertain): Measurands {
  const f = directly(calculator, uncertain);
  const { held, given } = uncertain;
  if (!held) return f;
  const start = given[held.input] as SI;
  const nudge = 1e-5 * Math.abs(start) || 1e-9;
  const scale = Math.abs(held.target) || 1;
  return (readings) => {
    const target = readings[WANTED] ?? held.target;
    const look = (x: SI): readonly [off: number, values: Values] => {
      const values = f({ ...readings, [held.input]: x });
      return [(values[held.result] ?? Number.NaN) - target, values];
    };
    let [a, b] = [start + nudge, start];
    let [offA] = look(a);
    for (let step = 0; step < MOST_STEPS; step += 1) {
      const [offB, values] = look(b);
      if (Math.abs(offB) <= MET * scale) return { ...values, [held.result]: target };
      const next = b - (offB * (b - a)) / (offB - offA);
      if (!Number.isFinite(next)) break;
      [a, offA, b] = [b, offB, next];
    }
    throw new DomainError(held.input, "No value was found for the held result.");
  };
}
