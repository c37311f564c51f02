import { DomainError, type SI } from "../../../calc/quantity/domain-error.ts";
import { plain, type Trace } from "../../../calc/relation/trace.ts";
import { type Calculator, type Input, isChoice, type Outcome, type When } from "./calculator.ts";
import type { Entries } from "./entry.ts";
import { type Given, heard } from "./evaluate.ts";

/** A quick answer: the part of a calculator that one question needs. Ids are of its inputs and results; numbers are in SI. */
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
}

/** What of a condition is left once the choices that are not asked are made. Throws where it cannot be met. */
function left(calculator: Calculator, view: View, when: When | undefined): When {
  const open: Record<string, readonly string[]> = {};
  for (const [id, options] of Object.entries(when ?? {})) {
    const choice = calculator.inputs[id];
    if (!choice || !isChoice(choice)) throw new Error(`“${calculator.id}” has no choice “${id}”.`);
    if (view.fields.includes(id)) open[id] = options;
    else if (!options.includes(view.choices[id] ?? choice.start))
      throw new Error(`“${view.title}” shows something of “${calculator.id}” that its “${id}” hides.`);
    Object.assign(open, left(calculator, view, choice.when));
  }
  return open;
}

function entryOf<T>(all: Readonly<Record<string, T>>, id: string, of: string): T {
  const found = Object.hasOwn(all, id) ? all[id] : undefined;
  if (!found) throw new Error(`“${of}” has no “${id}”.`);
  return found;
}

function asked(calculator: Calculator, view: View, id: string): Input {
  const { heading: _, ...input } = entryOf(calculator.inputs, id, calculator.id);
  const label = view.labels[id] ?? input.label;
  const when = left(calculator, view, input.when);
  return "options" in input
    ? { ...input, label, help: "", when, options: view.options[id] ?? input.options }
    : { ...input, label, help: "", when, start: view.start[id] ?? input.start };
}

function answered(calculator: Calculator, view: View, id: string): Outcome {
  const { heading: _, inPicture: __, ...result } = entryOf(calculator.results, id, calculator.id);
  return {
    ...result,
    label: view.labels[id] ?? result.label,
    when: left(calculator, view, result.when),
  };
}

/** All that the calculator hears: what is given, and behind it what is not asked. */
function completed(calculator: Calculator, view: View, given: Given): Given {
  const behind = Object.fromEntries(
    Object.entries(calculator.inputs).map(([id, input]) => [
      id,
      isChoice(input) ? (view.choices[id] ?? input.start) : (view.start[id] ?? input.start),
    ]),
  );
  const all: Record<string, SI | string> = { ...behind, ...given };
  for (const [id, shown] of Object.entries(view.same)) {
    const value = all[shown];
    if (value !== undefined) all[id] = value;
  }
  return heard(calculator, all);
}

/**
 * A calculator narrowed to a view: the same model, asked less and answering less. What it says of inputs and results that
 * are not in the view is left out: a test proves that they decide nothing that is shown.
 */
export function narrow(calculator: Calculator, view: View): Calculator {
  const pick = <T>(ids: readonly string[], one: (calculator: Calculator, view: View, id: string) => T) =>
    Object.fromEntries(ids.map((id) => [id, one(calculator, view, id)]));
  const isHidden = (about: string) =>
    (Object.hasOwn(calculator.inputs, about) && !view.fields.includes(about)) ||
    (Object.hasOwn(calculator.results, about) && !view.results.includes(about));
  const shownFor = (id: string) => view.same[id] ?? id;
  return {
    id: calculator.id,
    title: view.title,
    group: calculator.group,
    asks: view.asks,
    inputs: pick(view.fields, asked),
    results: pick(view.results, answered),
    relations: calculator.relations,
    model: (given, trace = plain) => {
      const through: Trace = {
        use: trace.use,
        note: (note) => {
          const about = shownFor(note.about);
          if (!isHidden(about)) trace.note({ ...note, about });
        },
      };
      try {
        return calculator.model(completed(calculator, view, given), through);
      } catch (error) {
        if (!(error instanceof DomainError)) throw error;
        throw new DomainError(shownFor(error.field), error.message, error.limit);
      }
    },
  };
}

/** The state of the calculator itself that shows what the view shows. */
export function widened(view: View, { fields, choices }: Entries): Entries {
  const same = Object.entries(view.same).flatMap(([id, shown]) => {
    const entry = fields[shown];
    return entry ? [[id, entry] as const] : [];
  });
  return {
    fields: { ...fields, ...Object.fromEntries(same) },
    choices: { ...view.choices, ...choices },
  };
}
