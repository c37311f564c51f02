import { isChoice } from "../calculators/engine/calculator.ts";
import type { View } from "../calculators/engine/view.ts";
import { calculator } from "./calculators.ts";
import { type Asked, workedFor } from "./examples.ts";

/** What a text shows of a calculator: ids of its inputs and results, and whose values stand where nothing is asked. */
export interface WantedPart extends Omit<Asked, "calculator"> {
  readonly fields: readonly string[];
  readonly results: readonly string[];
  /** Without the calculator's picture, where the text has one of its own. */
  readonly isPlain?: boolean | undefined;
}

/** The view that a text shows of the calculator by this id. Throws where the example is one of another calculator. */
export async function lessonView(id: string, wanted: WantedPart, page: string): Promise<View> {
  const { fields, results, isPlain = false, example, choices, given, barometer } = wanted;
  const of = calculator(id);
  const worked = await workedFor(
    { ...(example ? { example } : { calculator: id }), choices, given, barometer },
    page,
  );
  if (worked.calculator !== of)
    throw new Error(`The example “${example}” on ${page} is none of the calculator “${id}”.`);
  const start = Object.entries(worked.given).filter((one): one is [string, number] => {
    const [name, value] = one;
    const input = of.inputs[name];
    return typeof value === "number" && input !== undefined && !isChoice(input) && value !== input.start;
  });
  return {
    title: of.title,
    asks: of.asks,
    choices: worked.choices,
    fields,
    results,
    same: {},
    start: Object.fromEntries(start),
    labels: {},
    options: {},
    isDrawn: !isPlain,
  };
}
