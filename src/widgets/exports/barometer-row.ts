import { kinds } from "../../../calc/quantity/kinds.ts";
import { isChoice } from "../../calculators/engine/calculator.ts";
import { isShown } from "../../calculators/engine/shown.ts";
import type { GivenRow, Shown } from "./rows.ts";

/** Whether the barometer is among the inputs in sight. */
export const isBarometerGiven = ({ calculator, entries }: Shown): boolean =>
  Object.values(calculator.inputs).some(
    (input) => !isChoice(input) && input.barometer && isShown(calculator, input.when, entries.choices),
  );

/** The barometer of the page, where the calculator does not ask it itself: gauges count from it all the same. */
export function barometerRow(shown: Shown): readonly GivenRow[] {
  if (isBarometerGiven(shown)) return [];
  const { value, isExample } = shown.around.barometer;
  const unit = kinds.pressure[shown.around.system];
  return [
    {
      is: "number",
      id: "barometer",
      label: "Barometer",
      kind: "pressure",
      value,
      unit,
      typed: null,
      isExample,
    },
  ];
}
