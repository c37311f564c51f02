import type { SI } from "../../../calc/quantity/domain-error.ts";
import { type Calculator, type Choice, isChoice, type When } from "./calculator.ts";

/** The part of a calculator that one question needs. Ids are of its inputs and results; numbers are in SI. */
export interface View {
  readonly title: string;
  readonly asks: string;
  /** Options of choices that are not asked. Those named nowhere stand as in the calculator. */
  readonly choices: Readonly<Record<string, string>>;
  /** What is asked, in order. */
  readonly fields: readonly string[];
  /** What is answered, in order; the first one in sight is the answer. */
  readonly results: readonly string[];
  /** Inputs that are not asked and take the value of one that is. */
  readonly same: Readonly<Record<string, string>>;
  /** Other example values than the calculator's. */
  readonly start: Readonly<Record<string, SI>>;
  /** Other words for fields and results. */
  readonly labels: Readonly<Record<string, string>>;
  /** Other words for the options of a choice. */
  readonly options: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Draws the calculator's chart or field, where it shows nothing but what is asked and results. */
  readonly isDrawn?: boolean;
}

/** The option of a choice that is not asked. */
export const optionBehind = (view: View, id: string, choice: Choice): string =>
  view.choices[id] ?? choice.start;

/** What of a condition is left to the choices that are asked; null where the others do not meet it. */
export function conditionLeft(calculator: Calculator, view: View, when: When | undefined): When | null {
  const open: Record<string, readonly string[]> = {};
  for (const [id, options] of Object.entries(when ?? {})) {
    const choice = calculator.inputs[id];
    if (!choice || !isChoice(choice)) throw new Error(`“${calculator.id}” has no choice “${id}”.`);
    if (view.fields.includes(id)) open[id] = options;
    else if (!options.includes(optionBehind(view, id, choice))) return null;
    const behind = conditionLeft(calculator, view, choice.when);
    if (!behind) return null;
    Object.assign(open, behind);
  }
  return open;
}
