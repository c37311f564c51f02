import type { SI } from "../../calc/quantity/domain-error.ts";
import { kinds } from "../../calc/quantity/kinds.ts";
import { readQuantity } from "../../calc/quantity/read.ts";
import { writePlain } from "../../calc/quantity/write.ts";
import type { Note, Step } from "../../calc/relation/trace.ts";
import { readBarometer } from "../calculators/engine/barometer.ts";
import { type Calculator, type Field, isChoice, type Outcome } from "../calculators/engine/calculator.ts";
import { type Entries, type Entry, type Surroundings, startEntries } from "../calculators/engine/entry.ts";
import { evaluate } from "../calculators/engine/evaluate.ts";
import { writeLink } from "../calculators/engine/link.ts";
import { isShown } from "../calculators/engine/shown.ts";

/** What somebody types into a calculator: options by choice, and values as text with a unit by input. */
export interface Typed {
  readonly choices: Readonly<Record<string, string>>;
  readonly given: Readonly<Record<string, string>>;
  readonly barometer: string;
}

/** A worked example as its file declares it. */
export interface Example extends Typed {
  readonly calculator: string;
  /** What is worth showing in a lesson: ids of inputs, and of the relations whose steps stay. Without it, all. */
  readonly show?: { readonly given: readonly string[]; readonly steps: readonly string[] } | undefined;
  readonly asked: string;
  /** Ids of results that are asked for besides. */
  readonly also?: readonly string[] | undefined;
}

/** A result that an example asks for. */
export type AskedFor = Outcome & { readonly id: string; readonly value: SI };

/** A calculator after somebody typed: every value in SI. */
export interface Worked {
  readonly calculator: Calculator;
  readonly around: Surroundings;
  readonly choices: Readonly<Record<string, string>>;
  /** What was given, by id of its input; inputs that are not shown are in it too. */
  readonly given: Readonly<Record<string, SI | string>>;
  /** What came out, by id of the result. */
  readonly values: Readonly<Record<string, SI | undefined>>;
  readonly steps: readonly Step[];
  readonly notes: readonly Note[];
  /** What was typed, as it was written, with its unit's id; the barometer under the id of its input. */
  readonly typed: Readonly<Record<string, { readonly text: string; readonly unit: string }>>;
  /** The address of the calculator's own page with these values in it. */
  readonly link: string;
}

export interface WorkedExample extends Worked {
  readonly asked: AskedFor;
  readonly also: readonly AskedFor[];
  /** Ids of the fields that stand with these choices, and the steps: all, and those worth showing in a lesson. */
  readonly fields: readonly string[];
  readonly shownFields: readonly string[];
  readonly shownSteps: readonly Step[];
}

/** Builds the error that stops the build: where, which field, why. */
const trouble = (where: string, field: string, reason: string) => new Error(`${where}, ${field}: ${reason}`);

function fieldOf(where: string, calculator: Calculator, id: string): Field {
  const input = Object.hasOwn(calculator.inputs, id) ? calculator.inputs[id] : undefined;
  if (!input) throw trouble(where, id, `the calculator “${calculator.id}” has no such input.`);
  if (isChoice(input)) throw trouble(where, id, "this is a choice, and belongs under “choices”.");
  if (input.barometer) throw trouble(where, id, "the barometer is given once, under “barometer”.");
  return input;
}

function choicesOf(where: string, calculator: Calculator, typed: Typed): Record<string, string> {
  const choices: Record<string, string> = { ...startEntries(calculator, "metric").choices };
  for (const [id, option] of Object.entries(typed.choices)) {
    const input = Object.hasOwn(calculator.inputs, id) ? calculator.inputs[id] : undefined;
    if (!input || !isChoice(input))
      throw trouble(where, id, `the calculator “${calculator.id}” has no such choice.`);
    if (!Object.hasOwn(input.options, option)) {
      const options = Object.keys(input.options).join(", ");
      throw trouble(where, id, `there is no option “${option}”. Accepted: ${options}.`);
    }
    choices[id] = option;
  }
  return choices;
}

function readText(where: string, id: string, text: string, kind: Field["kind"], barometer?: SI): Entry {
  const reading = readQuantity(text, kind, kinds[kind].metric, { barometer });
  if (!reading.ok) throw trouble(where, id, reading.says);
  return {
    typed: writePlain(reading.number),
    example: reading.value,
    unit: reading.unit,
    shown: reading.unit,
  };
}

/**
 * Works a calculator as if somebody had typed: the same reader, limits and model. `where` names the file in errors.
 * Throws an `Error` that names file, field and reason where a text cannot be read, an id is not known, a value belongs
 * to no field that is shown, or the values have no result. What is not typed keeps its example value.
 */
export function work(calculator: Calculator, typed: Typed, where: string): Worked {
  const choices = choicesOf(where, calculator, typed);
  const barometerEntry = readText(where, "barometer", typed.barometer, "pressure");
  const barometer = readBarometer(barometerEntry);
  if (!barometer.ok) throw trouble(where, "barometer", barometer.says);
  const around: Surroundings = { system: "metric", barometer: { value: barometer.value, isExample: false } };

  const fields = { ...startEntries(calculator, "metric").fields };
  const asTyped: Record<string, { text: string; unit: string }> = {};
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (!isChoice(input) && input.barometer)
      asTyped[id] = { text: typed.barometer, unit: barometerEntry.unit };
  }
  for (const [id, text] of Object.entries(typed.given)) {
    const field = fieldOf(where, calculator, id);
    if (!isShown(calculator, field.when, choices))
      throw trouble(where, id, "with these choices the calculator does not ask for it.");
    const entry = readText(where, id, text, field.kind, barometer.value);
    fields[id] = entry;
    asTyped[id] = { text, unit: entry.unit };
  }

  const entries: Entries = { fields, choices };
  const { outcome, messages, given, trouble: reason } = evaluate(calculator, entries, around);
  if (!outcome) {
    const refused = Object.entries(messages).find(([, told]) => told.some(({ tone }) => tone === "invalid"));
    const says = refused?.[1].find(({ tone }) => tone === "invalid")?.says;
    throw trouble(where, refused?.[0] ?? "given", says ?? reason ?? "these values have no result.");
  }
  const link = writeLink([{ calculator, entries }], { ...around, barometerEntry });
  return {
    calculator,
    around,
    choices,
    given,
    values: outcome.values,
    steps: outcome.steps,
    notes: outcome.notes,
    typed: asTyped,
    link: `/numbers/${calculator.id}/#${link}`,
  };
}

/** The example with other choices or values; what its new choices do not ask for is left out. */
export function changed(example: Typed, calculator: Calculator, changes: Partial<Typed>): Typed {
  const choices = { ...example.choices, ...changes.choices };
  const isAsked = (id: string) => isShown(calculator, calculator.inputs[id]?.when, choices);
  const own = Object.entries(example.given).filter(([id]) => isAsked(id));
  return {
    choices: Object.fromEntries(Object.entries(choices).filter(([id]) => isAsked(id))),
    given: { ...Object.fromEntries(own), ...changes.given },
    barometer: changes.barometer ?? example.barometer,
  };
}

function askedFor(
  { calculator, values, choices }: Worked,
  id: string,
  where: string,
  field: string,
): AskedFor {
  const result = Object.hasOwn(calculator.results, id) ? calculator.results[id] : undefined;
  const value = values[id];
  if (!result || value === undefined || !isShown(calculator, result.when, choices))
    throw trouble(where, field, `the calculator gives no “${id}” with these choices.`);
  return { ...result, id, value };
}

/**
 * Works an example in full. Besides what `work` refuses, every choice and field that the calculator shows has to be
 * given, so that an example never changes with a calculator's example values.
 */
export function workExample(example: Example, calculator: Calculator, where: string): WorkedExample {
  const worked = work(calculator, example, where);
  for (const [id, input] of Object.entries(calculator.inputs)) {
    if (!isShown(calculator, input.when, worked.choices)) continue;
    const isGiven = isChoice(input) ? id in example.choices : input.barometer || id in example.given;
    if (!isGiven) throw trouble(where, id, "the calculator asks for it, and the example does not give it.");
  }
  const asked = askedFor(worked, example.asked, where, "asked");
  const also = (example.also ?? []).map((id) => askedFor(worked, id, where, "also"));
  const fields = Object.entries(calculator.inputs).flatMap(([id, input]) =>
    !isChoice(input) && isShown(calculator, input.when, worked.choices) ? [id] : [],
  );
  const { show } = example;
  if (!show) return { ...worked, asked, also, fields, shownFields: fields, shownSteps: worked.steps };
  for (const id of show.steps) {
    if (!worked.steps.some(({ relation }) => relation === id))
      throw trouble(where, "show", `no step of the working uses the relation “${id}”.`);
  }
  for (const id of show.given) {
    if (!fields.includes(id)) throw trouble(where, "show", `“${id}” is not given.`);
  }
  return {
    ...worked,
    asked,
    also,
    fields,
    shownFields: fields.filter((id) => show.given.includes(id)),
    shownSteps: worked.steps.filter(({ relation }) => show.steps.includes(relation)),
  };
}
