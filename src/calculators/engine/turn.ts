import { fromSI } from "../../../calc/quantity/units.ts";
import { writePlain } from "../../../calc/quantity/write.ts";
import { type Calculator, isChoice } from "./calculator.ts";
import { barometerContext, type Entries, type Entry, type Surroundings } from "./entry.ts";
import type { Evaluation } from "./evaluate.ts";
import { isShown } from "./shown.ts";

/**
 * The state with another option chosen. A field that comes into sight takes over a result of the same symbol that was shown
 * until now, so that a question turned round starts from its own answer. It stays an example while one was behind it.
 */
export function turned(
  calculator: Calculator,
  entries: Entries,
  { outcome, examples }: Evaluation,
  around: Surroundings,
  choices: Entries["choices"],
): Entries {
  const fields: Record<string, Entry> = { ...entries.fields };
  const wasShown = Object.entries(calculator.results).filter(([, result]) =>
    isShown(calculator, result.when, entries.choices),
  );
  for (const [id, input] of Object.entries(calculator.inputs)) {
    const entry = fields[id];
    if (isChoice(input) || !entry) continue;
    if (isShown(calculator, input.when, entries.choices) || !isShown(calculator, input.when, choices))
      continue;
    const found = wasShown.find(([, { symbol, kind }]) => symbol === input.symbol && kind === input.kind);
    const value = found && outcome?.values[found[0]];
    if (value === undefined || value < input.limits[0] || value > input.limits[1]) continue;
    const { shown } = entry;
    fields[id] =
      examples > 0
        ? { typed: null, example: value, unit: shown, shown }
        : {
            typed: writePlain(fromSI(value, shown, barometerContext(around))),
            example: entry.example,
            unit: shown,
            shown,
          };
  }
  return { ...entries, fields, choices };
}
