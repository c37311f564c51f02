import { DomainError, type SI } from "../../../calc/quantity/domain-error.ts";
import type { UnitSystem } from "../../../calc/quantity/kinds.ts";
import { plain, type Trace } from "../../../calc/relation/trace.ts";
import {
  type Calculator,
  type Input,
  isChoice,
  type Outcome,
  type Picture,
  type When,
} from "./calculator.ts";
import { type Entries, startEntries } from "./entry.ts";
import { type Given, heard } from "./evaluate.ts";

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

/** What a picture names. Only charts and fields are drawn of a part. */
function namedBy(picture: Picture<string, string>): readonly string[] | null {
  const ids = (() => {
    switch (picture.draw) {
      case "chart":
        return [
          picture.vary,
          picture.x,
          picture.y,
          picture.best?.at,
          ...picture.curves.map(({ y }) => y),
          ...(picture.bands ?? []).flatMap(({ from, to }) => [from, to]),
          ...(picture.bounds ?? []).map(({ at }) => at),
        ];
      case "field":
        return [picture.NTU, picture.R, picture.hot, picture.cold, picture.airOut, picture.waterOut];
      default:
        return null;
    }
  })();
  return ids?.filter((id) => id !== undefined) ?? null;
}

/** The picture of the calculator that a view may draw, with the results that it names beside those in sight. */
function pictureOf(calculator: Calculator, view: View) {
  const holds = (when: When | undefined) =>
    Object.entries(when ?? {}).every(([id, options]) => {
      const choice = calculator.inputs[id];
      return (
        choice &&
        isChoice(choice) &&
        !view.fields.includes(id) &&
        options.includes(view.choices[id] ?? choice.start)
      );
    });
  for (const picture of view.isDrawn ? (calculator.pictures ?? []) : []) {
    const ids = namedBy(picture);
    if (!ids || !holds(picture.when)) continue;
    const isAsked = (id: string) => view.fields.includes(id) || Object.hasOwn(calculator.results, id);
    if (!ids.every(isAsked)) continue;
    const beside = [...new Set(ids)].filter((id) => !view.fields.includes(id) && !view.results.includes(id));
    return { picture, beside };
  }
  return null;
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

/** The picture with its condition met, and its arrangement known by choices that the view may not ask. */
function freed(picture: Picture<string, string>, all: (given: Given) => Given): Picture<string, string> {
  const { when: _, ...free } = picture;
  return free.draw === "field" ? { ...free, arrangement: (given) => free.arrangement(all(given)) } : free;
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
  const drawn = pictureOf(calculator, view);
  const beside = Object.fromEntries(
    (drawn?.beside ?? []).map((id) => {
      const { when: _, heading: __, ...result } = entryOf(calculator.results, id, calculator.id);
      return [id, { ...result, inPicture: true as const }];
    }),
  );
  const pictures = drawn && [freed(drawn.picture, (given) => completed(calculator, view, given))];
  return {
    id: calculator.id,
    title: view.title,
    group: calculator.group,
    asks: view.asks,
    inputs: pick(view.fields, asked),
    results: { ...pick(view.results, answered), ...beside },
    ...(pictures && { pictures }),
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

/** The state of the calculator itself that shows what the view shows, its own example values where nothing is asked. */
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

/** The same, with the example values of the view where nothing is asked. */
export function widenedWithStart(
  calculator: Calculator,
  view: View,
  entries: Entries,
  system: UnitSystem,
): Entries {
  const { fields, choices } = widened(view, entries);
  const own = startEntries(calculator, system).fields;
  const behind = Object.entries(view.start).flatMap(([id, example]) => {
    const entry = own[id];
    return entry ? [[id, { ...entry, example }] as const] : [];
  });
  return { fields: { ...Object.fromEntries(behind), ...fields }, choices };
}
