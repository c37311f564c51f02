import type { SI } from "../../../calc/quantity/domain-error.ts";
import { defaultUnit, kinds, type UnitSystem } from "../../../calc/quantity/kinds.ts";
import { type Reading, readQuantity } from "../../../calc/quantity/read.ts";
import type { ReadContext } from "../../../calc/quantity/single-quantity.ts";
import { fromSI, unitOf } from "../../../calc/quantity/units.ts";
import { writePlain } from "../../../calc/quantity/write.ts";
import { type Calculator, type Field, isChoice } from "./calculator.ts";
import type { PlusMinus } from "./plus-minus.ts";

/**
 * What stands in one field.
 *
 * `typed` is null until a visitor touches the field; then the value is `example`, in SI. `unit` is the unit that the
 * typed text is in, `shown` the unit that the field shows. They differ after a change of unit, so that changing it and
 * changing it back loses nothing.
 */
export interface Entry {
  readonly typed: string | null;
  readonly example: SI;
  readonly unit: string;
  readonly shown: string;
}

/**
 * A result that is wanted, and the input that is to be found for it: the text as typed, its unit, and the unit shown.
 * While it is held, the input is found again whenever another one changes.
 */
export interface Want {
  readonly result: string;
  readonly input: string;
  readonly typed: string;
  readonly unit: string;
  readonly shown: string;
  readonly isHeld: boolean;
}

/** The state of one calculator: its fields by id, the option of each choice by id, and units by the id of a result. */
export interface Entries {
  readonly fields: Readonly<Record<string, Entry>>;
  readonly choices: Readonly<Record<string, string>>;
  /** Units in which results are shown, where they are not those of the unit system. */
  readonly units?: Readonly<Record<string, string>>;
  readonly want?: Want | undefined;
  /** What stands behind ± in the fields, where somebody said so. */
  readonly pm?: PlusMinus | undefined;
}

/** What entries are read against: asked once for the whole site. */
export interface Surroundings {
  readonly system: UnitSystem;
  readonly barometer: {
    readonly value: SI;
    readonly isExample: boolean;
    /** What was typed behind ± of it, Pa. */
    readonly within?: SI | undefined;
  };
  /** Where fields may be flows at stated conditions: the mass of dry air in one. */
  readonly massOfFlow?: NonNullable<ReadContext["massOfFlow"]>;
}

/**
 * The unit that a result is shown in: the one chosen, else that of the unit system. What is converted is shown in that of the
 * other system, unless it stands in its field so already.
 */
export function unitOfResult(
  calculator: Calculator,
  id: string,
  entries: Entries,
  system: UnitSystem,
): string {
  const result = calculator.results[id];
  if (!result) throw new Error(`“${calculator.id}” has no result “${id}”.`);
  const own = kinds[result.kind][system];
  if (entries.units?.[id] !== undefined) return entries.units[id];
  if (result.converts === undefined) return own;
  const other = kinds[result.kind][system === "us" ? "metric" : "us"];
  return entries.fields[result.converts]?.shown === other ? own : other;
}

/** The state nobody has touched yet. */
export function startEntries(calculator: Calculator, system: UnitSystem): Entries {
  const fields: Record<string, Entry> = {};
  const choices: Record<string, string> = {};
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (isChoice(input)) choices[id] = input.start;
    else {
      const unit = defaultUnit(input.kind, system);
      fields[id] = { typed: null, example: input.start, unit, shown: unit };
    }
  }
  return { fields, choices };
}

/** Fields nobody has touched follow the unit system; a field of one's own keeps its unit. */
export function inSystem(calculator: Calculator, entries: Entries, system: UnitSystem): Entries {
  const fields = Object.fromEntries(
    Object.entries(entries.fields).map(([id, entry]) => {
      const unit = defaultUnit((calculator.inputs[id] as Field).kind, system);
      return [id, entry.typed === null ? { ...entry, unit, shown: unit } : entry];
    }),
  );
  return { ...entries, fields };
}

export const barometerContext = (around: Surroundings) => ({ barometer: around.barometer.value });

/** The value of a field, or the sentence that says why there is none. */
export function readEntry(field: Field, entry: Entry, around: Surroundings): Reading {
  if (entry.typed !== null)
    return readQuantity(entry.typed, field.kind, entry.unit, {
      ...barometerContext(around),
      ...(around.massOfFlow && { massOfFlow: around.massOfFlow }),
    });
  return { ok: true, value: entry.example, number: entry.example, unit: entry.unit };
}

/** As many as results have. */
const exampleDigits = 4;

/** The text that stands in the field. An example may be rounded here; what is computed with is the value of its entry. */
export function entryText(field: Field, entry: Entry, around: Surroundings): string {
  if (entry.typed !== null && entry.shown === entry.unit) return entry.typed;
  const reading = readEntry(field, entry, around);
  if (!reading.ok) return entry.typed ?? "";
  const number = fromSI(reading.value, entry.shown, barometerContext(around));
  if (entry.typed === null) return writePlain(number, exampleDigits);
  return writePlain(number) + withinText(reading.within, entry.shown);
}

/** What stands behind a number in a unit that may be off by so much, in SI: nothing, or ` ± 3.6`. */
export const withinText = (within: SI | undefined, unit: string): string =>
  within === undefined ? "" : ` ± ${writePlain(within / unitOf(unit).factor)}`;
