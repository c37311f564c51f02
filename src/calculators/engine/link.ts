import type { SI } from "../../../calc/quantity/domain-error.ts";
import { isUnitOf, type Kind, type UnitSystem } from "../../../calc/quantity/kinds.ts";
import { exampleBarometer, readBarometer } from "./barometer.ts";
import { type Calculator, isChoice } from "./calculator.ts";
import { type Entries, type Entry, type Surroundings, startEntries, type Want } from "./entry.ts";

/**
 * The state of a page in its address, after `#`:
 *
 *     v=1&units=metric&barometer=99.0;kPa&charge-path.r=2.2;1&charge-path.T_0=~298.15;degC&charge-path.cooler=none
 *
 * A value is the text as typed, the unit it is in, and the unit shown where that differs. An example value is `~` and the
 * number in SI, so that a link opens as it was made even if the examples of a later version differ. The unit in which a
 * result is shown stands as `charge-path.T_m.in=degF`, where it was chosen. A wanted result stands as
 * `charge-path.want=rho_m;r;2.5;kg/m3;held`: the result, the input to be found, what was typed. Everything in a link is somebody else's data:
 * bounded, checked, and shown as text.
 */
export const version = "1";
const longest = 64_000;
const longestText = 200;

// A typed `~` is written as its code, so that only an example value begins with one.
const enc = (text: string) =>
  encodeURIComponent(text.toWellFormed()).replaceAll("%20", "+").replaceAll("~", "%7E");
const dec = (text: string) => decodeURIComponent(text.replaceAll("+", "%20"));

function writeEntry(entry: Entry): string {
  const value = entry.typed === null ? `~${entry.example}` : enc(entry.typed);
  const units = entry.shown === entry.unit ? [entry.unit] : [entry.unit, entry.shown];
  return [value, ...units.map(enc)].join(";");
}

const writeWant = ({ result, input, typed, unit, shown, isHeld }: Want): string =>
  [result, input, writeEntry({ typed, example: 0, unit, shown }), ...(isHeld ? ["held"] : [])].join(";");

/** The address part for calculators and their surroundings. */
export function writeLink(
  states: readonly { readonly calculator: Calculator; readonly entries: Entries }[],
  around: Surroundings & { readonly barometerEntry: Entry },
): string {
  const parts = [`v=${version}`, `units=${around.system}`, `barometer=${writeEntry(around.barometerEntry)}`];
  for (const { calculator, entries } of states) {
    for (const [id, input] of Object.entries(calculator.inputs)) {
      if (isChoice(input)) parts.push(`${calculator.id}.${id}=${enc(entries.choices[id] ?? input.start)}`);
      else if (!input.barometer) {
        const entry = entries.fields[id];
        if (entry) parts.push(`${calculator.id}.${id}=${writeEntry(entry)}`);
      }
    }
    for (const [id, unit] of Object.entries(entries.units ?? {}))
      parts.push(`${calculator.id}.${id}.in=${enc(unit)}`);
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
  const [value = "", ofUnit = "", shownUnit = ofUnit, ...rest] = text.split(";");
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
  const [result = "", input = "", ...entry] = isHeld ? parts.slice(0, -1) : parts;
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
  const entries: Record<
    string,
    {
      fields: Record<string, Entry>;
      choices: Record<string, string>;
      units?: Record<string, string>;
      want?: Want;
    }
  > = {};
  const stateOf = (calculator: Calculator) => {
    entries[calculator.id] ??= structuredClone(
      startEntries(calculator, system ?? own),
    ) as (typeof entries)[string];
    return entries[calculator.id] as (typeof entries)[string];
  };
  const text = hash.replace(/^#/, "");
  if (text.length > longest)
    return { system, barometer, entries, unread: ["The link is too long to be read."] };
  const parts = text.split("&").map((part): [string, string] => {
    const at = part.indexOf("=");
    return at < 0 ? [part, ""] : [part.slice(0, at), part.slice(at + 1)];
  });
  const given = parts.find(([key]) => key === "units")?.[1];
  if (given === "metric" || given === "us") system = given;
  for (const [key, value] of parts) {
    if (key === "v") {
      if (value !== version)
        unread.push(`The link is of version ${value.slice(0, 20)}; this site reads version ${version}.`);
    } else if (key === "units") {
      if (!system) unread.push("The link names a unit system that is not known here.");
    } else if (key === "barometer") {
      barometer = readLinkEntry(value, "pressure", exampleBarometer);
      if (barometer && !readBarometer(barometer).ok) barometer = null;
      if (!barometer) unread.push("The barometer in the link could not be read.");
    } else {
      const [id = "", name = "", role] = key.split(".", 3);
      if (elsewhere.includes(id)) continue;
      const calculator = calculators.find((c) => c.id === id);
      if (calculator && role === "in") {
        const result = Object.hasOwn(calculator.results, name) ? calculator.results[name] : undefined;
        const unit = decoded(value);
        if (!result || unit === null || !isUnitOf(result.kind, unit)) {
          unread.push(`The unit of “${(result?.label ?? name).slice(0, 40)}” in the link could not be read.`);
          continue;
        }
        const state = stateOf(calculator);
        state.units = { ...state.units, [name]: unit };
        continue;
      }
      if (calculator && name === "want") {
        const want = readWant(calculator, value);
        if (want) stateOf(calculator).want = want;
        else unread.push("What was to be found, by the link, could not be read.");
        continue;
      }
      const input =
        calculator && Object.hasOwn(calculator.inputs, name) ? calculator.inputs[name] : undefined;
      if (!calculator || !input || (!isChoice(input) && input.barometer)) {
        unread.push(`“${key.slice(0, 40)}” in the link names nothing on this page.`);
        continue;
      }
      const state = stateOf(calculator);
      if (isChoice(input)) {
        if (Object.hasOwn(input.options, value)) state.choices[name] = value;
        else unread.push(`“${input.label}” in the link could not be read. The example stands there.`);
        continue;
      }
      const entry = readLinkEntry(value, input.kind, input.start);
      const possible = entry?.typed !== null || isWithin(entry.example, input.limits);
      if (entry && possible) state.fields[name] = entry;
      else unread.push(`“${input.label}” in the link could not be read. The example value stands there.`);
    }
  }
  return { system, barometer, entries, unread };
}
