import type { UnitSystem } from "../../../../calc/quantity/kinds.ts";
import type { Calculator } from "../../../../src/calculators/engine/calculator.ts";
import { startEntries } from "../../../../src/calculators/engine/entry.ts";
import { evaluate } from "../../../../src/calculators/engine/evaluate.ts";
import { every } from "../../../../src/components/calculators.ts";
import { formulaOf } from "../../../../src/components/formulas.ts";
import type { Worked } from "../../../../src/widgets/exports/working-as-text.ts";

export const formulas = Object.fromEntries(
  every.flatMap(({ relations }) => relations.map((relation) => [relation.id, formulaOf(relation)])),
);

export const link = "https://example.org/numbers/x/#v=2&units=metric&x.y=5%25;kPa";

/** A calculator at a state, with all that exports take. */
export function workedAt(
  calculator: Calculator,
  system: UnitSystem,
  change: (entries: ReturnType<typeof startEntries>) => ReturnType<typeof startEntries> = (same) => same,
): Worked {
  const around = { system, barometer: { value: 99_000, isExample: false } };
  const entries = change(startEntries(calculator, system));
  const { outcome } = evaluate(calculator, entries, around);
  if (!outcome) throw new Error(`${calculator.id} has no outcome`);
  return { calculator, entries, outcome, around, formulas, link };
}

/** Each calculator untouched, in both systems of units, and with the last option of every choice where that gives numbers. */
export const states: readonly (readonly [string, Worked])[] = every.flatMap((calculator) => {
  const states: (readonly [string, Worked])[] = [
    [`${calculator.id}, metric`, workedAt(calculator, "metric")],
    [`${calculator.id}, us`, workedAt(calculator, "us")],
  ];
  try {
    const others = workedAt(calculator, "metric", (start) => ({
      ...start,
      choices: Object.fromEntries(
        Object.entries(calculator.inputs).flatMap(([id, input]) =>
          "options" in input ? [[id, Object.keys(input.options).at(-1) ?? ""]] : [],
        ),
      ),
    }));
    states.push([`${calculator.id}, other choices`, others]);
  } catch {
    // Examples need not fit all choices at once.
  }
  return states;
});
