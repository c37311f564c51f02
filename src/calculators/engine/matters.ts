import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { Calculator } from "./calculator.ts";
import { type Given, tryModel } from "./evaluate.ts";
import { choicesOf, freeInputs } from "./shown.ts";

/** The first input that moves a result from its value at a state; where none does, the first. */
export function firstThatMatters(
  calculator: Calculator,
  given: Given,
  result: string,
  here: SI | undefined,
): string | undefined {
  const inputs = freeInputs(calculator, choicesOf(given));
  const moves = inputs.find(([id, { limits, whole }]) => {
    const present = given[id];
    if (typeof present !== "number" || whole) return false;
    const near = present + 1e-3 * (present < limits[1] / 2 ? limits[1] - present : limits[0] - present);
    const value = tryModel(calculator, given, { [id]: near })?.[result];
    return value !== undefined && value !== here;
  });
  return (moves ?? inputs[0])?.[0];
}
