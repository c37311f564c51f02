import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { Reading } from "../../../calc/quantity/read.ts";
import { repeated } from "../../../calc/quantity/repeated.ts";
import { unitOf } from "../../../calc/quantity/units.ts";
import type { Calculator, Field, Outcome } from "./calculator.ts";
import { type Entries, type Entry, readEntry, type Surroundings, type Want } from "./entry.ts";
import type { Evaluation } from "./evaluate.ts";

/** A result as a field, in which it is typed what it is to be. */
export const fieldOfResult = ({ symbol, kind }: Outcome): Field => ({
  label: "Wanted value",
  symbol,
  kind,
  start: 0,
  limits: [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY],
  help: "",
});

export const entryOfWant = ({ typed, unit, shown }: Want): Entry => ({ typed, example: 0, unit, shown });

/** What is wanted, as a number, or the sentence that says why it is none. */
export function readWanted(calculator: Calculator, want: Want, around: Surroundings): Reading {
  const result = calculator.results[want.result];
  if (!result) return { ok: false, says: "There is no such result." };
  return readEntry(fieldOfResult(result), entryOfWant(want), around);
}

/** To this part of it a result is as wanted. */
const asWanted = 1e-6;

export const isAsWanted = (value: SI | undefined, target: SI): boolean =>
  value !== undefined && Math.abs(value - target) <= asWanted * Math.abs(target);

/** The evaluation, which says at a field that is held how it is found. */
export function withHeld(
  calculator: Calculator,
  { want }: Entries,
  evaluation: Evaluation,
  around: Surroundings,
): Evaluation {
  const reading = want?.isHeld ? readWanted(calculator, want, around) : null;
  const result = want && calculator.results[want.result];
  if (!want || !result || !reading?.ok) return evaluation;
  const isFound = isAsWanted(evaluation.outcome?.values[want.result], reading.value);
  const quantity = `${repeated(want.typed)} ${/\p{L}|%|°/u.test(want.typed) ? "" : unitOf(want.unit).label}`;
  const says = `${isFound ? "Found" : "Sought"} so that “${result.label}” is ${quantity.trim()}.`;
  const others = evaluation.messages[want.input] ?? [];
  const messages = { ...evaluation.messages, [want.input]: [{ tone: "plain" as const, says }, ...others] };
  return { ...evaluation, messages };
}
