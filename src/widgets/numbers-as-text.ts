import { kinds } from "../../calc/quantity/kinds.ts";
import { unitOf } from "../../calc/quantity/units.ts";
import { writeQuantity } from "../../calc/quantity/write.ts";
import { type Calculator, isChoice } from "../calculators/engine/calculator.ts";
import {
  barometerContext,
  type Entries,
  readEntry,
  type Surroundings,
  unitOfResult,
} from "../calculators/engine/entry.ts";
import type { Success } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";

export interface Shown {
  readonly calculator: Calculator;
  readonly entries: Entries;
  readonly outcome: Success | null;
  readonly around: Surroundings;
}

/** An input as it stands in its field: “1.2 bar”, and whether it is the visitor's own. */
function inputText({ calculator, entries, around }: Shown, id: string): string | null {
  const input = calculator.inputs[id];
  if (!input || !isShown(calculator, input.when, entries.choices)) return null;
  if (isChoice(input)) return input.options[entries.choices[id] ?? ""] ?? "";
  const entry = entries.fields[id];
  if (!entry) return null;
  const follows = input.barometer && entry.typed === null;
  const reading = follows ? null : readEntry(input, entry, around);
  if (reading && !reading.ok) return `${entry.typed} (cannot be used)`;
  const text = writeQuantity(reading?.value ?? around.barometer.value, entry.shown, barometerContext(around));
  const isExample = entry.typed === null && (!input.barometer || around.barometer.isExample);
  return isExample ? `${text} (example value)` : text;
}

/** The inputs in sight: “Boost on the gauge: 1.2 bar”. */
const inputLines = (shown: Shown): readonly string[] =>
  Object.entries(shown.calculator.inputs).flatMap(([id, { label }]) => {
    const text = inputText(shown, id);
    return text === null ? [] : [`${label}: ${text}`];
  });

/** The barometer of the page, in the unit of the page. */
function barometerLine(around: Surroundings): string {
  const barometer = writeQuantity(
    around.barometer.value,
    kinds.pressure[around.system],
    barometerContext(around),
  );
  return `Barometer: ${barometer}${around.barometer.isExample ? " (example value)" : ""}`;
}

/** Inputs, results, barometer and link as lines of text. */
export function numbersAsText(shown: Shown, link: string): string {
  const { calculator, entries, outcome, around } = shown;
  const lines = [calculator.title, ...inputLines(shown), ""];
  let heading: string | undefined;
  let told: string | undefined;
  for (const [id, result] of Object.entries(calculator.results)) {
    heading = result.heading ?? heading;
    if (!outcome || result.inPicture || !isShown(calculator, result.when, entries.choices)) continue;
    const value = outcome.values[id];
    if (value === undefined) continue;
    if (heading && heading !== told) lines.push(heading);
    told = heading;
    lines.push(
      `${result.label}: ${writeQuantity(value, kinds[result.kind][around.system], barometerContext(around))}`,
    );
  }
  lines.push("", barometerLine(around), link);
  return lines.join("\n");
}

/** Whether a gauge or a barometer is among what is shown: then the numbers hold at one barometer only. */
const hangsOnBarometer = ({ calculator, entries }: Shown): boolean =>
  Object.entries(calculator.inputs).some(
    ([id, input]) =>
      !isChoice(input) &&
      isShown(calculator, input.when, entries.choices) &&
      unitOf(entries.fields[id]?.shown ?? "1").gauge === true,
  ) || Object.values(entries.units ?? {}).some((unit) => unitOf(unit).gauge === true);

const isBarometerAsked = ({ calculator }: Shown): boolean =>
  Object.values(calculator.inputs).some((input) => !isChoice(input) && input.barometer);

/**
 * A quick answer as one line, to be sent: what was asked, what was given, the barometer where it matters, what came out,
 * and the link that opens it again.
 */
export function answerAsText(shown: Shown, link: string): string {
  const { calculator, entries, outcome, around } = shown;
  const given = [...inputLines(shown)];
  if (!isBarometerAsked(shown) && hangsOnBarometer(shown)) given.push(barometerLine(around));
  const found = Object.entries(calculator.results).flatMap(([id, result]) => {
    const value = outcome?.values[id];
    if (value === undefined || !isShown(calculator, result.when, entries.choices)) return [];
    const unit = unitOfResult(calculator, id, entries, around.system);
    return [`${result.label}: ${writeQuantity(value, unit, barometerContext(around))}`];
  });
  // Plain spaces: the line goes into messages and notes that search for what was typed.
  const line = `${calculator.asks} ${found.join("; ")}. Given: ${given.join("; ")}.`.replaceAll(
    "\u00a0",
    " ",
  );
  return `${line} ${link}`;
}
