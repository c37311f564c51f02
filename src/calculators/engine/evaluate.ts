import { lastBits } from "../../../calc/quantity/accept.ts";
import { DomainError, type Limit, type SI } from "../../../calc/quantity/domain-error.ts";
import { kinds } from "../../../calc/quantity/kinds.ts";
import { repeated } from "../../../calc/quantity/repeated.ts";
import { type UnitContext, unitOf } from "../../../calc/quantity/units.ts";
import { type BoundSide, writeBound, writeQuantity } from "../../../calc/quantity/write.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";
import { type Note, plain, recording, type Step } from "../../../calc/relation/trace.ts";
import { plainUnit, readBarometer } from "./barometer.ts";
import { type Calculator, type Field, isChoice } from "./calculator.ts";
import { barometerContext, type Entries, type Entry, readEntry, type Surroundings } from "./entry.ts";
import { choicesOf, isShown } from "./shown.ts";
import { withinMessages } from "./within.ts";

/** A sentence under a field. `invalid` refuses the value, `outside` keeps it, `plain` only tells. */
export interface Message {
  readonly tone: "invalid" | "outside" | "plain";
  readonly says: string;
}

export type Given = Readonly<Record<string, SI | string>>;

export interface Success {
  /** A result that has no meaning at this state is absent. */
  readonly values: Readonly<Record<string, SI | undefined>>;
  readonly steps: readonly Step[];
  /** Those of the steps, by id. */
  readonly relations: ReadonlyMap<string, AnyRelation>;
  /** Notes that belong to no field that is shown. */
  readonly notes: readonly Note[];
}

export interface Evaluation {
  readonly given: Given;
  /** What was typed behind ± of the fields in sight, in SI. */
  readonly within: Readonly<Record<string, SI>>;
  readonly messages: Readonly<Record<string, readonly Message[]>>;
  /** Fields that are shown, and how many of them still hold the example value. */
  readonly fields: number;
  readonly examples: number;
  /** Every field in sight could be read and is within its limits, whatever the model says of them together. */
  readonly isRead: boolean;
  readonly outcome: Success | null;
  /** Why there is no outcome, where no single field is to blame. */
  readonly trouble: string | null;
}

/**
 * A sentence, with the bound that it speaks of in the visitor's own unit.
 *
 * Sentences that have a bound leave its number out and have it added here, so that a bound never appears in a unit that
 * the visitor did not choose.
 */
export function withLimit(
  says: string,
  limit: Limit | undefined,
  around: Surroundings,
  how: { readonly digits?: number; readonly side?: BoundSide | undefined } = {},
): string {
  if (!limit) return says;
  const unit = kinds[limit.kind][around.system];
  const bound = writeBound(limit.value, unit, barometerContext(around), how.digits, how.side);
  return `${says} The bound is ${bound}.`;
}

/** A note with its bound, which nobody has to type in again: four figures are enough. */
export const noteText = ({ says, limit }: Note, around: Surroundings): string =>
  withLimit(says, limit, around, { digits: 4 });

function fieldMessages(field: Field, entry: Entry, value: SI, around: Surroundings): Message[] {
  const context = barometerContext(around);
  const write = (x: SI, side: BoundSide) => writeBound(x, entry.shown, context, 6, side);
  const span = ([from, to]: readonly [SI, SI]) => `${write(from, "least")} to ${write(to, "most")}`;
  const [least, most] = field.limits;
  if (value < least - lastBits(least) || value > most + lastBits(most)) {
    const says = `${saidBy(entry, value, context)} cannot be used here. Accepted: ${span(field.limits)}.`;
    return [{ tone: "invalid", says }];
  }
  if (field.typical && (value < field.typical[0] || value > field.typical[1])) {
    const says = `Outside the usual ${span(field.typical)}. The number is kept.`;
    return [{ tone: "outside", says }];
  }
  return [];
}

/** A value in the visitor's own words, since rounding could make it look like the bound that it is past. */
const saidBy = (entry: Entry, value: SI, context: UnitContext): string =>
  entry.typed === null || entry.shown !== entry.unit
    ? writeQuantity(value, entry.shown, context)
    : `${repeated(entry.typed)}${/[\p{L}%°]/u.test(entry.typed) ? "" : `\u00a0${unitOf(entry.unit).label}`}`.trim();

/** A filter and a duct take up to this part of the barometer, which is no reason for a remark: common practice, no source. */
const inletDepression = 0.95;

/** What a number was turned into, where that is not plain from the field: another unit, or a gauge. */
function turnedInto(
  field: Field,
  entry: Entry,
  reading: { readonly value: SI; readonly unit: string },
  around: Surroundings,
): string | undefined {
  if (entry.typed === null) return undefined;
  const context = barometerContext(around);
  const write = (unit: string) => writeQuantity(reading.value, unit, context);
  if (reading.unit !== entry.shown) return `That is ${write(entry.shown)}.`;
  if (field.kind !== "pressure" || field.barometer) return undefined;
  if (unitOf(entry.shown).gauge) return `That is ${write(plainUnit(entry.shown))} absolute.`;
  if (reading.value > around.barometer.value) {
    return `On the gauge that is ${write(`${entry.shown}-g`).replace(" gauge", "")}.`;
  }
  if (reading.value > inletDepression * around.barometer.value) return undefined;
  const barometer = writeQuantity(around.barometer.value, entry.shown, context);
  return `That is below the barometer, ${barometer}. If it was read off a gauge, choose a unit that says gauge.`;
}

/** What a model hears: only what is in sight with the choices made, so that nothing hidden decides a result. */
export function heard(calculator: Calculator, given: Given): Given {
  const choices = choicesOf(given);
  return Object.fromEntries(
    Object.entries(given).filter(([id]) => isShown(calculator, calculator.inputs[id]?.when, choices)),
  );
}

/** Which side of its bound a refused number should have been on; unknown where the bound is of another quantity. */
function sideOf({ limit }: DomainError, value: SI | string | undefined): BoundSide | undefined {
  if (!limit || typeof value !== "number" || value === limit.value) return undefined;
  return value > limit.value ? "most" : "least";
}

/** Several relations of one path may have the same thing to say. */
const distinct = (notes: readonly Note[]): readonly Note[] => [
  ...new Map(notes.map((note) => [`${note.about} ${note.says}`, note])).values(),
];

/** Reads every field, runs the model once with its trace, and says what is wrong where. Never throws. */
export function evaluate(calculator: Calculator, entries: Entries, around: Surroundings): Evaluation {
  const given: Record<string, SI | string> = { ...entries.choices };
  const within: Record<string, SI> = {};
  const messages: Record<string, Message[]> = {};
  let fields = 0;
  let examples = 0;
  let refused = false;
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (isChoice(input)) continue;
    const entry = entries.fields[id];
    if (!entry) continue;
    given[id] = entry.example;
    if (!isShown(calculator, input.when, entries.choices)) continue;
    fields += 1;
    if (input.barometer) {
      given[id] = around.barometer.value;
      if (around.barometer.within !== undefined) within[id] = around.barometer.within;
      if (around.barometer.isExample && entry.typed === null) examples += 1;
      if (entry.typed === null) continue;
    } else if (entry.typed === null) examples += 1;
    const reading = input.barometer ? readBarometer(entry) : readEntry(input, entry, around);
    if (!reading.ok) {
      messages[id] = [{ tone: "invalid", says: reading.says }];
      refused = true;
      continue;
    }
    given[id] = reading.value;
    if (reading.within !== undefined && !input.barometer) within[id] = reading.within;
    const found = fieldMessages(input, entry, reading.value, around);
    refused ||= found.some((m) => m.tone === "invalid");
    const turned = turnedInto(input, entry, reading, around);
    messages[id] = [reading.understood, turned]
      .filter((says) => says !== undefined)
      .map((says): Message => ({ tone: "plain", says }))
      .concat(found, withinMessages(input, entry, reading, around));
  }
  const told = { given, within, messages, fields, examples, isRead: !refused };
  if (refused) return { ...told, outcome: null, trouble: null };
  try {
    const trace = recording();
    const values = calculator.model(heard(calculator, given), trace);
    // A model leaves out what has no meaning at a state; a number that is none would be a fault of ours.
    const lost = Object.entries(calculator.results).find(
      ([id, result]) =>
        isShown(calculator, result.when, entries.choices) &&
        values[id] !== undefined &&
        !Number.isFinite(values[id]),
    );
    if (lost) {
      const trouble = `These values give no ${lost[1].label.toLowerCase()}. Nearer the example values there is one.`;
      return { ...told, outcome: null, trouble };
    }
    const isAtField = ({ about }: Note) =>
      Object.hasOwn(calculator.inputs, about) &&
      isShown(calculator, calculator.inputs[about]?.when, entries.choices);
    for (const note of distinct(trace.notes)) {
      if (!isAtField(note)) continue;
      messages[note.about] = [
        ...(messages[note.about] ?? []),
        { tone: "outside", says: noteText(note, around) },
      ];
    }
    return {
      ...told,
      outcome: {
        values,
        steps: trace.steps,
        relations: trace.relations,
        notes: distinct(trace.notes.filter((n) => !isAtField(n))),
      },
      trouble: null,
    };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const input = calculator.inputs[error.field];
    const says = withLimit(error.message, error.limit, around, { side: sideOf(error, given[error.field]) });
    if (!input || !isShown(calculator, input.when, entries.choices))
      return { ...told, outcome: null, trouble: says };
    // A refused number is not kept, so a remark that it is unusual would be untrue.
    const kept = (messages[error.field] ?? []).filter(({ tone }) => tone !== "outside");
    messages[error.field] = [...kept, { tone: "invalid", says }];
    return { ...told, outcome: null, trouble: null };
  }
}

/** The outcome with some inputs changed, or null where the model refuses: for charts and for the path not taken. */
export function tryModel(
  calculator: Calculator,
  given: Given,
  changes: Given,
): Readonly<Record<string, SI | undefined>> | null {
  try {
    return calculator.model(heard(calculator, { ...given, ...changes }), plain);
  } catch (error) {
    if (error instanceof DomainError) return null;
    throw error;
  }
}
