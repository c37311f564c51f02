import { kinds } from "../../../calc/quantity/kinds.ts";
import { writeQuantity } from "../../../calc/quantity/write.ts";
import { readBarometer } from "../../calculators/engine/barometer.ts";
import { type Calculator, type Input, isChoice } from "../../calculators/engine/calculator.ts";
import { barometerContext, type Surroundings } from "../../calculators/engine/entry.ts";
import { evaluate, type Message } from "../../calculators/engine/evaluate.ts";
import { isShown } from "../../calculators/engine/shown.ts";
import type { Running } from "../use-calculator.ts";
import { differenceText } from "./difference.ts";
import type { Held } from "./use-hold.ts";

/** A calculator with what is held marked in it. */
export interface Compared {
  /** With the held option in the help of each choice that differs. */
  readonly calculator: Calculator;
  /** With the held value among the messages of each field that differs. */
  readonly running: Running;
  /** What a result was, and how it differs now. */
  readonly beside: (id: string) => string;
}

const isSame = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/** Sets the present state beside the held one. */
export function compare(calculator: Calculator, held: Held, running: Running): Compared {
  const { around, entries, evaluation, standing, isStale } = running;
  const reading = readBarometer(held.barometer);
  const heldAround: Surroundings = {
    system: around.system,
    barometer: {
      value: reading.ok ? reading.value : around.barometer.value,
      isExample: held.barometer.typed === null,
    },
  };
  const was = evaluate(calculator, held.entries, heldAround);
  const isInSight = (input: Input) =>
    isShown(calculator, input.when, entries.choices) && isShown(calculator, input.when, held.entries.choices);

  const inputs: Record<string, Input> = { ...calculator.inputs };
  const messages: Record<string, readonly Message[]> = { ...evaluation.messages };
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (!isInSight(input)) continue;
    if (isChoice(input)) {
      const option = held.entries.choices[id] ?? input.start;
      if (option === (entries.choices[id] ?? input.start)) continue;
      inputs[id] = { ...input, help: `Held: ${input.options[option]}. ${input.help}`.trim() };
      continue;
    }
    const [before, now] = [was.given[id], evaluation.given[id]];
    const entry = entries.fields[id];
    const isRead = !(messages[id] ?? []).some(({ tone }) => tone === "invalid");
    if (typeof before !== "number" || typeof now !== "number" || !entry || (isRead && isSame(before, now)))
      continue;
    const says = `Held: ${writeQuantity(before, entry.shown, barometerContext(heldAround))}.`;
    messages[id] = [...(messages[id] ?? []), { tone: "plain", says }];
  }

  return {
    calculator: { ...calculator, inputs },
    running: { ...running, evaluation: { ...evaluation, messages } },
    beside: (id) => {
      const result = calculator.results[id];
      if (!result || !was.outcome) return "";
      const isThere = isShown(calculator, result.when, held.entries.choices);
      const unit = kinds[result.kind][around.system];
      const now = isStale ? undefined : standing?.outcome.values[id];
      if (!isThere) return "Held: not asked for.";
      return differenceText(result, was.outcome.values[id], now, unit, heldAround, around);
    },
  };
}
