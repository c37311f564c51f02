import type { UnitSystem } from "../../../calc/quantity/kinds.ts";
import { readBarometer } from "../../calculators/engine/barometer.ts";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import { startEntries } from "../../calculators/engine/entry.ts";
import { writeLink } from "../../calculators/engine/link.ts";
import { readLink } from "../../calculators/engine/read-link.ts";
import type { Held } from "./use-hold.ts";

const elevation = "elevation&";

/** Puts what is held of a calculator beside what this tab's history keeps of the page; null takes it away. */
export function keep(calculator: Calculator, held: Held | null, system: UnitSystem): void {
  const { [calculator.id]: _, ...others } = history.state?.held ?? {};
  history.replaceState(
    {
      ...history.state,
      held: held ? { ...others, [calculator.id]: written(calculator, held, system) } : others,
    },
    "",
  );
}

/** A held state as a text, which later versions of the site read as they do a link. */
export function written(
  calculator: Calculator,
  { entries, barometer, fromElevation }: Held,
  system: UnitSystem,
): string {
  const around = { system, barometer: { value: 0, isExample: false }, barometerEntry: barometer };
  return (fromElevation ? elevation : "") + writeLink([{ calculator, entries }], around, { isDraft: true });
}

/** The state in such a text, or null where there is none. */
export function readKept(calculator: Calculator, text: string): Held | null {
  const fromElevation = text.startsWith(elevation);
  const opened = readLink(fromElevation ? text.slice(elevation.length) : text, [calculator]);
  const { barometer, system } = opened;
  if (!barometer || !readBarometer(barometer).ok) return null;
  const entries = opened.entries[calculator.id] ?? startEntries(calculator, system ?? "metric");
  return { entries, barometer, fromElevation };
}
