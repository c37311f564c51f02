import { useMemo } from "preact/hooks";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { writeLink } from "../calculators/engine/link.ts";
import { narrow, type View, widenedWithStart } from "../calculators/engine/view.ts";
import { CalculatorSheet } from "./calculator-sheet.tsx";

/** A part of a calculator inside a text. What it does not ask stands as in the text's example. */
export function ViewSheet({ calculator: whole, view }: { calculator: Calculator; view: View }) {
  const calculator = useMemo(() => narrow(whole, view), [whole, view]);
  return (
    <CalculatorSheet
      calculator={calculator}
      foot={({ entries, around, barometer }) => {
        const all = widenedWithStart(whole, view, entries, around.system);
        const state = writeLink([{ calculator: whole, entries: all }], {
          ...around,
          barometerEntry: barometer,
        });
        return (
          <p class="msg">
            What is not asked here stands as in the example.{" "}
            <a href={`/numbers/${whole.id}/#${state}`}>All fields, and every step of the working</a>
          </p>
        );
      }}
    />
  );
}
