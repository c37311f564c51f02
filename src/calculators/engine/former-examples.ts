import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { Calculator } from "./calculator.ts";
import { isChoice } from "./calculator.ts";
import type { Entries, Entry } from "./entry.ts";

/**
 * The version of links that are written now. A link leaves out what stands as in the example, so the version also says
 * which examples: it goes up by one whenever the `start` of an input changes, and the old one is put down below.
 */
export const version = 2;

/** The `start` that an input had in links up to and with this version. */
export interface FormerExample {
  readonly upTo: number;
  readonly calculator: string;
  readonly input: string;
  readonly start: SI | string;
}

export const formerExamples: readonly FormerExample[] = [];

/** The example of an input in links of a version; undefined where it is that of today. */
export function exampleAt(
  calculator: string,
  input: string,
  of: number,
  former: readonly FormerExample[] = formerExamples,
): SI | string | undefined {
  const later = former.filter(
    (one) => one.calculator === calculator && one.input === input && of <= one.upTo,
  );
  return later.sort((a, b) => a.upTo - b.upTo)[0]?.start;
}

/** A state with the examples that links of a version mean where they say nothing. A part's link says its own. */
export function withExamplesOf(
  of: number,
  calculator: Calculator,
  { fields, choices, ...rest }: Entries,
  former: readonly FormerExample[] = formerExamples,
): Entries {
  if (calculator.isPart) return { ...rest, fields, choices };
  const then = {
    fields: { ...fields } as Record<string, Entry>,
    choices: { ...choices } as Record<string, string>,
  };
  for (const [id, input] of Object.entries(calculator.inputs)) {
    const start = exampleAt(calculator.id, id, of, former);
    const entry = then.fields[id];
    if (isChoice(input) && typeof start === "string" && Object.hasOwn(input.options, start))
      then.choices[id] = start;
    if (entry && typeof start === "number") then.fields[id] = { ...entry, example: start };
  }
  return { ...rest, ...then };
}
