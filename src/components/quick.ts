import { type CollectionEntry, getCollection } from "astro:content";
import { kinds } from "../../calc/quantity/kinds.ts";
import { readQuantity } from "../../calc/quantity/read.ts";
import { isChoice } from "../calculators/engine/calculator.ts";
import type { View } from "../calculators/engine/view.ts";
import { calculator } from "./calculators.ts";

export type QuickEntry = CollectionEntry<"quick">;

export const quickInOrder = async (): Promise<readonly QuickEntry[]> =>
  (await getCollection("quick")).sort((a, b) => a.data.order - b.data.order);

/** What of its calculator a quick answer shows. Throws for an example value that cannot be read. */
export function viewOf({ id, data }: Pick<QuickEntry, "id" | "data">): View {
  const { title, asks, choices, fields, results, same, labels, options } = data;
  const { inputs } = calculator(data.calculator);
  const start = Object.entries(data.given).map(([name, text]) => {
    const input = inputs[name];
    if (!input || isChoice(input))
      throw new Error(`content/quick/${id}: “${name}” is no number of “${data.calculator}”.`);
    const reading = readQuantity(text, input.kind, kinds[input.kind].metric, {});
    if (!reading.ok) throw new Error(`content/quick/${id}, ${name}: ${reading.says}`);
    return [name, reading.value] as const;
  });
  return { title, asks, choices, fields, results, same, labels, options, start: Object.fromEntries(start) };
}
