import type { UnitSystem } from "../../../calc/quantity/kinds.ts";
import type { Calculator } from "./calculator.ts";
import { type Entries, startEntries } from "./entry.ts";
import type { View } from "./view.ts";

/** The state of the calculator itself that gives what the view gives, with the view's example values where nothing is asked. */
export function widened(
  calculator: Calculator,
  view: View,
  { fields, choices }: Entries,
  system: UnitSystem,
): Entries {
  const own = startEntries(calculator, system).fields;
  const behind = Object.entries(view.start).flatMap(([id, example]) => {
    const entry = own[id];
    return entry ? [[id, { ...entry, example }] as const] : [];
  });
  const same = Object.entries(view.same).flatMap(([id, shown]) => {
    const entry = fields[shown];
    return entry ? [[id, entry] as const] : [];
  });
  return {
    fields: { ...Object.fromEntries(behind), ...fields, ...Object.fromEntries(same) },
    choices: { ...view.choices, ...choices },
  };
}
