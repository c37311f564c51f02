import { DomainError, type SI } from "../../../calc/quantity/domain-error.ts";
import { plain, type Trace } from "../../../calc/relation/trace.ts";
import { type Calculator, type Input, isChoice, type Outcome, type When } from "./calculator.ts";
import { type Given, heard } from "./evaluate.ts";
import { narrowedPicture } from "./narrow-picture.ts";
import { conditionLeft, optionBehind, type View } from "./view.ts";

function entryOf<T>(all: Readonly<Record<string, T>>, id: string, of: string): T {
  const found = Object.hasOwn(all, id) ? all[id] : undefined;
  if (!found) throw new Error(`“${of}” has no “${id}”.`);
  return found;
}

function whenOf(calculator: Calculator, view: View, when: When | undefined): When {
  const left = conditionLeft(calculator, view, when);
  if (!left) throw new Error(`“${view.title}” shows something of “${calculator.id}” that its choices hide.`);
  return left;
}

function asked(calculator: Calculator, view: View, id: string): Input {
  const { heading: _, ...input } = entryOf(calculator.inputs, id, calculator.id);
  const label = view.labels[id] ?? input.label;
  const when = whenOf(calculator, view, input.when);
  return "options" in input
    ? { ...input, label, help: "", when, options: view.options[id] ?? input.options }
    : { ...input, label, help: "", when, start: view.start[id] ?? input.start };
}

function answered(calculator: Calculator, view: View, id: string): Outcome {
  const { heading: _, inPicture: __, ...result } = entryOf(calculator.results, id, calculator.id);
  return {
    ...result,
    label: view.labels[id] ?? result.label,
    when: whenOf(calculator, view, result.when),
  };
}

/** All that the calculator hears: what is given, and behind it what is not asked. */
function completed(calculator: Calculator, view: View, given: Given): Given {
  const behind = Object.fromEntries(
    Object.entries(calculator.inputs).map(([id, input]) => [
      id,
      isChoice(input) ? optionBehind(view, id, input) : (view.start[id] ?? input.start),
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
  const { beside, ...drawn } = narrowedPicture(calculator, view, (given) =>
    completed(calculator, view, given),
  );
  return {
    id: calculator.id,
    title: view.title,
    isPart: true,
    group: calculator.group,
    asks: view.asks,
    inputs: pick(view.fields, asked),
    results: { ...pick(view.results, answered), ...beside },
    ...drawn,
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
