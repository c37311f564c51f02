import { type Calculator, isChoice, type When } from "../calculators/engine/calculator.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { quantities } from "./quantities.ts";

/** A page that works numbers out. */
export interface Worker {
  readonly href: string;
  readonly text: string;
  readonly calculator: Calculator;
}

/** A page that takes one quantity and gives another, and how many more numbers it asks for. */
export interface Way {
  readonly href: string;
  readonly text: string;
  readonly more: number;
}

/** The options that a condition and all behind it leave of each choice. */
function allowed(calculator: Calculator, when: When | undefined, so: Map<string, readonly string[]>): void {
  for (const [id, options] of Object.entries(when ?? {})) {
    const before = so.get(id);
    so.set(id, before ? before.filter((option) => options.includes(option)) : options);
    allowed(calculator, calculator.inputs[id]?.when, so);
  }
}

/** How many numbers a calculator asks for when it takes one of its inputs and gives one of its results; null if it cannot. */
export function numbersAsked(calculator: Calculator, input: string, result: string): number | null {
  const left = new Map<string, readonly string[]>();
  const conditions = [calculator.inputs[input]?.when, calculator.results[result]?.when];
  for (const when of conditions) allowed(calculator, when, left);
  const choices: Record<string, string> = {};
  for (const [id, choice] of Object.entries(calculator.inputs)) {
    if (!isChoice(choice)) continue;
    const options = left.get(id) ?? [choice.start];
    const [first] = options;
    if (first === undefined) return null;
    choices[id] = options.includes(choice.start) ? choice.start : first;
  }
  if (!conditions.every((when) => isShown(calculator, when, choices))) return null;
  return Object.values(calculator.inputs).filter(
    (one) => !isChoice(one) && isShown(calculator, one.when, choices),
  ).length;
}

/** The quantities that symbols mean, each with the ids that have them. */
function byQuantity(all: Readonly<Record<string, object>>): ReadonlyMap<number, readonly string[]> {
  const found = new Map<number, string[]>();
  for (const [id, one] of Object.entries(all)) {
    if (!("symbol" in one) || ("inPicture" in one && one.inPicture)) continue;
    const at = quantities.findIndex(({ symbols }) => symbols.includes(String(one.symbol)));
    if (at >= 0) found.set(at, [...(found.get(at) ?? []), id]);
  }
  return found;
}

/**
 * The pages that take one quantity and give another, by the places of both in the list: “10 11”. What asks for least stands
 * first; of two that ask for as much, the one that came first. Of two pages over one calculator only the first counts.
 */
export function takesAndGives(workers: readonly Worker[]): Readonly<Record<string, readonly Way[]>> {
  const ways: Record<string, Way[]> = {};
  const taken = new Set<string>();
  for (const { href, text, calculator } of workers) {
    const gives = byQuantity(calculator.results);
    for (const [have, inputs] of byQuantity(calculator.inputs)) {
      for (const [want, results] of gives) {
        if (have === want) continue;
        const counts = inputs
          .flatMap((input) => results.map((result) => numbersAsked(calculator, input, result)))
          .filter((count) => count !== null);
        if (counts.length === 0) continue;
        const key = `${have} ${want}`;
        // A quick answer leads on to the page of its calculator.
        const isTaken = `${key} ${calculator.id}`;
        if (taken.has(isTaken)) continue;
        taken.add(isTaken);
        ways[key] = [...(ways[key] ?? []), { href, text, more: Math.min(...counts) - 1 }];
      }
    }
  }
  for (const list of Object.values(ways)) list.sort((a, b) => a.more - b.more);
  return ways;
}
