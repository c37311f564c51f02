import type { SI } from "../../../calc/quantity/domain-error.ts";
import { defaultUnit, isUnitOf, type Kind, type UnitSystem } from "../../../calc/quantity/kinds.ts";
import { calculatorNow, inputNow, isRetired, optionNow, resultNow } from "./aliases.ts";
import { exampleBarometer, readBarometer } from "./barometer.ts";
import { type Calculator, type Field, isChoice } from "./calculator.ts";
import { type Entries, type Entry, type Surroundings, startEntries, type Want } from "./entry.ts";
import { formerExamples, version, withExamplesOf } from "./former-examples.ts";
import { isShown } from "./shown.ts";

/**
 * The state of a page in its address, after `#`:
 *
 *     v=2&units=metric&barometer=99.0;kPa&charge-path.T_0=86;degF;degC&charge-path.r=2.4&charge-path.cooler=none
 *
 * A value is the text as typed, the unit it is in unless it is a plain number, and the unit shown where that differs. What
 * stands as in the example is left out: the version says which examples are meant. An example of another value is `~` and
 * the number in SI. The unit in which a result is shown stands as `charge-path.T_m.in=degF`, where it was chosen. A wanted
 * result stands as `charge-path.want=rho_m;r;2.5;kg/m3;held`: the result, the input to be found, what was typed. Everything
 * in a link is somebody else's data: bounded, checked, and shown as text.
 */
const longest = 64_000;
const longestText = 200;

// A typed `~` is written as its code, so that only an example value begins with one.
const enc = (text: string) =>
  encodeURIComponent(text.toWellFormed())
    .replaceAll("%20", "+")
    .replaceAll("%2F", "/")
    .replaceAll("%2C", ",")
    .replaceAll("~", "%7E");
const dec = (text: string) => decodeURIComponent(text.replaceAll("+", "%20"));

/** The unit of an entry that names none. */
const plainNumber = "1";

function writeEntry(entry: Entry): string {
  const value = entry.typed === null ? `~${entry.example}` : enc(entry.typed);
  const units = entry.shown === entry.unit ? [entry.unit] : [entry.unit, entry.shown];
  return [value, ...(units.join() === plainNumber ? [] : units.map(enc))].join(";");
}

const writeWant = ({ result, input, typed, unit, shown, isHeld }: Want): string =>
  [result, input, writeEntry({ typed, example: 0, unit, shown }), ...(isHeld ? ["held"] : [])].join(";");

/** Whether a field stands as nobody has touched it. */
function isUntouched(field: Field, { typed, example, unit, shown }: Entry, system: UnitSystem): boolean {
  const own = defaultUnit(field.kind, system);
  return typed === null && example === field.start && unit === own && shown === own;
}

/**
 * The address part for calculators and their surroundings. A calculator leaves out what stands as in its example. A part
 * of one has examples of its own, which stand in the link too, and leaves out what is not in sight; with `isDraft` nothing
 * of it is left out, since it is the visitor's own work.
 */
export function writeLink(
  states: readonly { readonly calculator: Calculator; readonly entries: Entries }[],
  around: Surroundings & { readonly barometerEntry: Entry },
  { isDraft = false } = {},
): string {
  const parts = [`v=${version}`, `units=${around.system}`, `barometer=${writeEntry(around.barometerEntry)}`];
  for (const { calculator, entries } of states) {
    const { isPart = false } = calculator;
    const isLeftOut = (one: Pick<Field, "when"> | undefined) =>
      isPart && !isDraft && !isShown(calculator, one?.when, entries.choices);
    for (const [id, input] of Object.entries(calculator.inputs)) {
      if (isLeftOut(input)) continue;
      if (isChoice(input)) {
        const option = entries.choices[id] ?? input.start;
        if (isPart || option !== input.start) parts.push(`${calculator.id}.${id}=${enc(option)}`);
      } else if (!input.barometer) {
        const entry = entries.fields[id];
        if (entry && (isPart || !isUntouched(input, entry, around.system)))
          parts.push(`${calculator.id}.${id}=${writeEntry(entry)}`);
      }
    }
    for (const [id, unit] of Object.entries(entries.units ?? {}))
      if (!isLeftOut(calculator.results[id])) parts.push(`${calculator.id}.${id}.in=${enc(unit)}`);
    if (entries.want) parts.push(`${calculator.id}.want=${writeWant(entries.want)}`);
  }
  return parts.join("&");
}

/** What a link says, as far as it could be read. `unread` are sentences for the visitor. */
export interface Opened {
  readonly system: UnitSystem | null;
  readonly barometer: Entry | null;
  readonly entries: Readonly<Record<string, Entries>>;
  readonly unread: readonly string[];
}

function decoded(text: string): string | null {
  try {
    return dec(text);
  } catch {
    return null;
  }
}

function readLinkEntry(text: string, kind: Kind, start: SI): Entry | null {
  const [value = "", ofUnit = plainNumber, shownUnit = ofUnit, ...rest] = text.split(";");
  const [typed, unit, shown] = [decoded(value), decoded(ofUnit), decoded(shownUnit)];
  if (typed === null || unit === null || shown === null) return null;
  if (rest.length > 0 || !isUnitOf(kind, unit) || !isUnitOf(kind, shown) || typed.length > longestText)
    return null;
  if (!value.startsWith("~")) return { typed, example: start, unit, shown };
  const example = Number(typed.slice(1));
  return Number.isFinite(example) && typed.length > 1 ? { typed: null, example, unit, shown } : null;
}

function readWant(calculator: Calculator, text: string): Want | null {
  const parts = text.split(";");
  const isHeld = parts.at(-1) === "held";
  const [oldResult = "", oldInput = "", ...entry] = isHeld ? parts.slice(0, -1) : parts;
  const [result, input] = [resultNow(calculator.id, oldResult), inputNow(calculator.id, oldInput)];
  const wanted = Object.hasOwn(calculator.results, result) ? calculator.results[result] : undefined;
  const sought = Object.hasOwn(calculator.inputs, input) ? calculator.inputs[input] : undefined;
  if (!wanted || !sought || isChoice(sought) || sought.barometer) return null;
  const read = readLinkEntry(entry.join(";"), wanted.kind, 0);
  if (!read || read.typed === null) return null;
  return { result, input, typed: read.typed, unit: read.unit, shown: read.shown, isHeld };
}

const isWithin = (x: SI, [least, most]: readonly [SI, SI]): boolean => x >= least && x <= most;

/** Whether an address part is a link of this site at all; `#eq-2.4` is not. */
export const isLink = (hash: string): boolean => /^#?[\w.-]+=/.test(hash);

/**
 * Reads an address part for some calculators of a page; `elsewhere` are the ids of the page's others, which read their
 * own parts. `own` is the visitor's unit system, for a link that names none. Never throws.
 */
export function readLink(
  hash: string,
  calculators: readonly Calculator[],
  elsewhere: readonly string[] = [],
  own: UnitSystem = "metric",
): Opened {
  const unread: string[] = [];
  let system: UnitSystem | null = null;
  let barometer: Entry | null = null;
  const entries: Record<string, Writable> = {};
  const text = hash.replace(/^#/, "");
  if (text.length > longest)
    return { system, barometer, entries, unread: ["The link is too long to be read."] };
  const parts = text.split("&").map((part): [string, string] => {
    const at = part.indexOf("=");
    return at < 0 ? [part, ""] : [part.slice(0, at), part.slice(at + 1)];
  });
  const given = parts.find(([key]) => key === "units")?.[1];
  if (given === "metric" || given === "us") system = given;
  const written = parts.find(([key]) => key === "v")?.[1] ?? String(version);
  const isKnown = /^[1-9]\d?$/.test(written) && Number(written) <= version;
  const of = isKnown ? Number(written) : version;
  if (!isKnown)
    unread.push(`The link is of version ${written.slice(0, 20)}; this site reads versions 1 to ${version}.`);

  const stateOf = (calculator: Calculator): Writable => {
    entries[calculator.id] ??= structuredClone(
      withExamplesOf(of, calculator, startEntries(calculator, system ?? own)),
    ) as Writable;
    return entries[calculator.id] as Writable;
  };
  // A link of old examples that says nothing of a calculator means them all the same.
  for (const calculator of calculators)
    if (formerExamples.some((one) => one.calculator === calculator.id && of <= one.upTo)) stateOf(calculator);

  for (const [key, value] of parts) {
    if (key === "v") continue;
    if (key === "units") {
      if (!system) unread.push("The link names a unit system that is not known here.");
    } else if (key === "barometer") {
      barometer = readLinkEntry(value, "pressure", exampleBarometer);
      if (barometer && !readBarometer(barometer).ok) barometer = null;
      if (!barometer) unread.push("The barometer in the link could not be read.");
    } else {
      const [oldId = "", name = "", role] = key.split(".", 3);
      const id = calculatorNow(oldId);
      if (elsewhere.includes(id) || isRetired(id, name)) continue;
      const calculator = calculators.find((c) => c.id === id);
      const says = !calculator
        ? `“${key.slice(0, 40)}” in the link names nothing on this page.`
        : role === "in"
          ? readResultUnit(calculator, name, value, stateOf)
          : name === "want"
            ? takeWant(calculator, value, stateOf)
            : readInput(calculator, name, value, key, stateOf);
      if (says !== undefined) unread.push(says);
    }
  }
  return { system, barometer, entries, unread };
}

interface Writable {
  fields: Record<string, Entry>;
  choices: Record<string, string>;
  units?: Record<string, string>;
  want?: Want;
}

type StateOf = (calculator: Calculator) => Writable;

/** Takes the unit in which a result is shown, or says what could not be read. */
function readResultUnit(
  calculator: Calculator,
  old: string,
  value: string,
  stateOf: StateOf,
): string | undefined {
  const name = resultNow(calculator.id, old);
  const result = Object.hasOwn(calculator.results, name) ? calculator.results[name] : undefined;
  const unit = decoded(value);
  if (!result || unit === null || !isUnitOf(result.kind, unit))
    return `The unit of “${(result?.label ?? name).slice(0, 40)}” in the link could not be read.`;
  const state = stateOf(calculator);
  state.units = { ...state.units, [name]: unit };
  return undefined;
}

/** Takes what is to be found, or says that it could not be read. */
function takeWant(calculator: Calculator, value: string, stateOf: StateOf): string | undefined {
  const want = readWant(calculator, value);
  if (!want) return "What was to be found, by the link, could not be read.";
  stateOf(calculator).want = want;
  return undefined;
}

/** Takes what stands in an input, or says what could not be read. */
function readInput(
  calculator: Calculator,
  old: string,
  value: string,
  key: string,
  stateOf: StateOf,
): string | undefined {
  const name = inputNow(calculator.id, old);
  const input = Object.hasOwn(calculator.inputs, name) ? calculator.inputs[name] : undefined;
  if (!input || (!isChoice(input) && input.barometer))
    return `“${key.slice(0, 40)}” in the link names nothing on this page.`;
  const state = stateOf(calculator);
  if (isChoice(input)) {
    const option = optionNow(calculator.id, name, value);
    if (!Object.hasOwn(input.options, option))
      return `“${input.label}” in the link could not be read. The example stands there.`;
    state.choices[name] = option;
    return undefined;
  }
  const entry = readLinkEntry(value, input.kind, input.start);
  if (!entry || (entry.typed === null && !isWithin(entry.example, input.limits)))
    return `“${input.label}” in the link could not be read. The example value stands there.`;
  state.fields[name] = entry;
  return undefined;
}
