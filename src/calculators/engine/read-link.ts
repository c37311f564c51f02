import type { SI } from "../../../calc/quantity/domain-error.ts";
import { isUnitOf, type Kind, type UnitSystem } from "../../../calc/quantity/kinds.ts";
import { calculatorNow, inputNow, isRetired, optionNow, resultNow } from "./aliases.ts";
import { exampleBarometer, readBarometer } from "./barometer.ts";
import { type Calculator, isChoice } from "./calculator.ts";
import { type Entries, type Entry, startEntries, type Want } from "./entry.ts";
import { formerExamples, version, withExamplesOf } from "./former-examples.ts";
import { plainNumber } from "./link.ts";
import {
  BAROMETER,
  isMeaning,
  isWay,
  longestPair,
  mostPairs,
  type PlusMinus,
  type Together,
} from "./plus-minus.ts";

const longest = 64_000;
const longestText = 200;

const dec = (text: string) => decodeURIComponent(text.replaceAll("+", "%20"));

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

function readPlusMinus(calculator: Calculator, text: string): PlusMinus | null {
  const [means = "", shows = "", ...pairs] = text.split(";");
  if (!isMeaning(means) || !isWay(shows) || pairs.length % 3 !== 0 || pairs.length > 3 * mostPairs)
    return null;
  const isNumber = (id: string): boolean => {
    const input = Object.hasOwn(calculator.inputs, id) ? calculator.inputs[id] : undefined;
    return id === BAROMETER || (input !== undefined && !isChoice(input));
  };
  const together: Together[] = [];
  for (let i = 0; i < pairs.length; i += 3) {
    const [a, b] = [inputNow(calculator.id, pairs[i] ?? ""), inputNow(calculator.id, pairs[i + 1] ?? "")];
    const typed = decoded(pairs[i + 2] ?? "");
    if (typed === null || typed.length > longestPair || !isNumber(a) || !isNumber(b)) return null;
    together.push({ a, b, typed });
  }
  return { means, shows, together };
}

const isWithin = (x: SI, [least, most]: readonly [SI, SI]): boolean => x >= least && x <= most;

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
            : name === "pm"
              ? takePlusMinus(calculator, value, stateOf)
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
  pm?: PlusMinus;
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

/** Takes how ± is meant, or says that it could not be read. */
function takePlusMinus(calculator: Calculator, value: string, stateOf: StateOf): string | undefined {
  const pm = readPlusMinus(calculator, value);
  if (!pm) return "How ± is meant, by the link, could not be read. What is usual stands there.";
  stateOf(calculator).pm = pm;
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
