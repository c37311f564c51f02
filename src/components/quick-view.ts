import { kinds } from "../../calc/quantity/kinds.ts";
import { readQuantity } from "../../calc/quantity/read.ts";
import { isChoice } from "../calculators/engine/calculator.ts";
import type { View } from "../calculators/engine/view.ts";
import { calculator } from "./calculators.ts";

/** A view as its file declares it: its calculator by id, and example values as text with a unit. */
export interface DeclaredView extends Omit<View, "start"> {
  readonly calculator: string;
  readonly given: Readonly<Record<string, string>>;
}

/** The view that a file of content/quick/ declares. Throws for an example value that cannot be read. */
export function viewOf(id: string, declared: DeclaredView): View {
  const { calculator: of, given, title, asks, choices, fields, results, same, labels, options } = declared;
  const start = Object.entries(given).map(([name, text]) => {
    const input = calculator(of).inputs[name];
    if (!input || isChoice(input)) throw new Error(`content/quick/${id}: “${name}” is no number of “${of}”.`);
    const reading = readQuantity(text, input.kind, kinds[input.kind].metric, {});
    if (!reading.ok) throw new Error(`content/quick/${id}, ${name}: ${reading.says}`);
    return [name, reading.value] as const;
  });
  return { title, asks, choices, fields, results, same, labels, options, start: Object.fromEntries(start) };
}
