import { plusMinusParts, withUnitOf } from "../../../calc/quantity/plus-minus.ts";
import { Refusal } from "../../../calc/quantity/refusal.ts";
import { fromSI, unitOf } from "../../../calc/quantity/units.ts";
import { writePlain } from "../../../calc/quantity/write.ts";
import type { Field } from "./calculator.ts";
import { barometerContext, type Entry, readEntry, type Surroundings } from "./entry.ts";

const isAsTyped = (entry: Entry): entry is Entry & { readonly typed: string } =>
  entry.typed !== null && entry.shown === entry.unit;

/** What stands behind ± in a field, in the unit that it shows or as it was typed; nothing where no ± stands. */
export function behindOf(field: Field, entry: Entry, around: Surroundings): string {
  if (isAsTyped(entry)) return plusMinusParts(entry.typed)?.within ?? "";
  const reading = readEntry(field, entry, around);
  const within = reading.ok ? reading.within : undefined;
  return within === undefined ? "" : writePlain(within / unitOf(entry.shown).factor);
}

/** The value without its ±, with the unit that it was read in. */
function bareText(field: Field, entry: Entry, around: Surroundings): string {
  if (isAsTyped(entry)) {
    const parts = plusMinusParts(entry.typed);
    if (!parts) return entry.typed;
    try {
      return withUnitOf(parts.value, parts.within, field.kind);
    } catch (error) {
      if (error instanceof Refusal) return parts.value;
      throw error;
    }
  }
  const reading = readEntry(field, entry, around);
  return reading.ok
    ? writePlain(fromSI(reading.value, entry.shown, barometerContext(around)))
    : (entry.typed ?? "");
}

/** The field with another text behind ±; without one where it is empty. */
export function withBehind(field: Field, entry: Entry, around: Surroundings, behind: string): Entry {
  const value = bareText(field, entry, around);
  const typed = behind.trim() === "" ? value : `${value} ± ${behind.trimStart()}`;
  return { ...entry, typed, unit: entry.shown };
}
