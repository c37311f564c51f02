import type { SI } from "../../../calc/quantity/domain-error.ts";
import { writeBound } from "../../../calc/quantity/write.ts";
import type { Field } from "../../calculators/engine/calculator.ts";
import {
  barometerContext,
  type Entry,
  readEntry,
  type Surroundings,
} from "../../calculators/engine/entry.ts";
import type { Message } from "../../calculators/engine/evaluate.ts";

/** One end of a sweep as it is typed, read; or the sentence that says why it cannot be one. */
export type End =
  | { readonly ok: true; readonly value: SI }
  | { readonly ok: false; readonly message: Message };

const refused = (says: string): End => ({ ok: false, message: { tone: "invalid", says } });

/** Reads one end of a sweep of a field. */
export function readEnd(field: Field, entry: Entry, around: Surroundings): End {
  const reading = readEntry(field, entry, around);
  if (!reading.ok) return refused(reading.says);
  const [least, most] = field.limits;
  if (reading.value >= least && reading.value <= most) return { ok: true, value: reading.value };
  const write = (x: SI, side: "least" | "most") =>
    writeBound(x, entry.shown, barometerContext(around), 6, side);
  return refused(
    `The field takes ${write(least, "least")} to ${write(most, "most")}, and so does a sweep of it.`,
  );
}

/** Both ends, where the first lies below the second. */
export function readSpan(
  field: Field,
  entries: readonly [Entry, Entry],
  around: Surroundings,
): { readonly span: readonly [SI, SI] | null; readonly says: readonly [Message[], Message[]] } {
  const [from, to] = [readEnd(field, entries[0], around), readEnd(field, entries[1], around)];
  const says: [Message[], Message[]] = [from.ok ? [] : [from.message], to.ok ? [] : [to.message]];
  if (!from.ok || !to.ok) return { span: null, says };
  if (from.value < to.value) return { span: [from.value, to.value], says };
  says[1].push({ tone: "invalid", says: "A sweep ends above where it begins. Type a larger number here." });
  return { span: null, says };
}
