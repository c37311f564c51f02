import type { SI } from "../../calc/quantity/domain-error.ts";
import type { Kind } from "../../calc/quantity/kinds.ts";
import { isChoice } from "../calculators/engine/calculator.ts";
import { isShown } from "../calculators/engine/shown.ts";
import type { Worked } from "./worked-example.ts";

/** A result or an input of a worked calculator, by its id. Throws where the calculator shows none by that id. */
export function numberOf(
  { calculator, choices, values, given }: Worked,
  id: string,
): { readonly value: SI; readonly kind: Kind } {
  const result = Object.hasOwn(calculator.results, id) ? calculator.results[id] : undefined;
  const input = Object.hasOwn(calculator.inputs, id) ? calculator.inputs[id] : undefined;
  if (result && isShown(calculator, result.when, choices)) {
    const value = values[id];
    if (value !== undefined) return { value, kind: result.kind };
  }
  if (input && !isChoice(input) && isShown(calculator, input.when, choices)) {
    const value = given[id];
    if (typeof value === "number") return { value, kind: input.kind };
  }
  throw new Error(
    `The calculator “${calculator.id}” has no number “${id}” with the choices made. Expected a result or an input that it shows.`,
  );
}
