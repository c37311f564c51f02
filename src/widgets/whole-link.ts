import type { Calculator } from "../calculators/engine/calculator.ts";
import { writeLink } from "../calculators/engine/link.ts";
import type { View } from "../calculators/engine/view.ts";
import { widened } from "../calculators/engine/widen.ts";
import { atRoot } from "./at-root.ts";
import type { Running } from "./use-calculator.ts";

/** The address of the whole calculator, opened with what stands in a view of it. */
export function wholeLink(
  whole: Calculator,
  view: View,
  { entries, around, barometer }: Pick<Running, "entries" | "around" | "barometer">,
): string {
  const states = [{ calculator: whole, entries: widened(whole, view, entries, around.system) }];
  return atRoot(`/numbers/${whole.id}/#${writeLink(states, { ...around, barometerEntry: barometer })}`);
}
