import { useMemo } from "preact/hooks";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { narrow } from "../calculators/engine/narrow.ts";
import type { View } from "../calculators/engine/view.ts";
import { CalculatorSheet } from "./calculator-sheet.tsx";
import { wholeLink } from "./whole-link.ts";

/** A part of a calculator inside a text. What it does not ask stands as in the text's example. */
export function ViewSheet({ calculator: whole, view }: { calculator: Calculator; view: View }) {
  const calculator = useMemo(() => narrow(whole, view), [whole, view]);
  return (
    <CalculatorSheet
      calculator={calculator}
      foot={(running) => (
        <p class="msg">
          What is not asked here stands as in the example.{" "}
          <a href={wholeLink(whole, view, running)}>All fields, and every step of the working</a>
        </p>
      )}
    />
  );
}
