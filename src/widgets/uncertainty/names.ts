import { defaultUnit } from "../../../calc/quantity/kinds.ts";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import type { Entries, Surroundings } from "../../calculators/engine/entry.ts";
import { BAROMETER, WANTED } from "../../calculators/engine/plus-minus.ts";

/** What a reading is called. */
export function nameOf(calculator: Calculator, { want }: Entries, id: string): string {
  if (id === BAROMETER) return "Barometer";
  if (id === WANTED) return `Wanted: ${calculator.results[want?.result ?? ""]?.label ?? ""}`;
  return calculator.inputs[id]?.label ?? id;
}

/** The unit in which a reading is shown. */
export function unitOfReading({ fields, want }: Entries, { system }: Surroundings, id: string): string {
  if (id === BAROMETER) return defaultUnit("pressure", system);
  if (id === WANTED) return want?.shown ?? "1";
  return fields[id]?.shown ?? "1";
}
