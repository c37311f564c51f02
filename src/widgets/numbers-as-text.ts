import { kinds } from "../../calc/quantity/kinds.ts";
import { writeQuantity } from "../../calc/quantity/write.ts";
import { type Calculator, isChoice } from "../calculators/engine/calculator.ts";
import { barometerContext, type Entries, readEntry, type Surroundings } from "../calculators/engine/entry.ts";
import type { Success } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";

export interface Shown {
  readonly calculator: Calculator;
  readonly entries: Entries;
  readonly outcome: Success | null;
  readonly around: Surroundings;
}

/** Inputs, results, barometer and link as lines of text. */
export function numbersAsText({ calculator, entries, outcome, around }: Shown, link: string): string {
  const context = barometerContext(around);
  const lines = [calculator.title];
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (!isShown(calculator, input.when, entries.choices)) continue;
    if (isChoice(input)) {
      lines.push(`${input.label}: ${input.options[entries.choices[id] ?? ""] ?? ""}`);
      continue;
    }
    const entry = entries.fields[id];
    if (!entry) continue;
    const follows = input.barometer && entry.typed === null;
    const reading = follows ? null : readEntry(input, entry, around);
    const text =
      reading && !reading.ok
        ? `${entry.typed} (cannot be used)`
        : writeQuantity(reading?.value ?? around.barometer.value, entry.shown, context);
    const isExample = entry.typed === null && (!input.barometer || around.barometer.isExample);
    lines.push(`${input.label}: ${text}${isExample ? " (example value)" : ""}`);
  }
  lines.push("");
  let heading: string | undefined;
  let told: string | undefined;
  for (const [id, result] of Object.entries(calculator.results)) {
    heading = result.heading ?? heading;
    if (!outcome || result.inPicture || !isShown(calculator, result.when, entries.choices)) continue;
    const value = outcome.values[id];
    if (value === undefined) continue;
    if (heading && heading !== told) lines.push(heading);
    told = heading;
    lines.push(`${result.label}: ${writeQuantity(value, kinds[result.kind][around.system], context)}`);
  }
  const unit = kinds.pressure[around.system];
  const barometer = writeQuantity(around.barometer.value, unit, context);
  lines.push("", `Barometer: ${barometer}${around.barometer.isExample ? " (example value)" : ""}`, link);
  return lines.join("\n");
}
