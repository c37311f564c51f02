import type { SI } from "../../../calc/quantity/domain-error.ts";
import { type Kind, kinds, type UnitSystem } from "../../../calc/quantity/kinds.ts";
import { readBarometer } from "./barometer.ts";
import { type Calculator, isChoice } from "./calculator.ts";
import { type Entries, type Entry, type Surroundings, startEntries } from "./entry.ts";

/**
 * The state of a page in its address, after `#`:
 *
 *     v=1&units=metric&barometer=99.0;kPa&charge-path.r=2.2;1&charge-path.T_0=~298.15;degC&charge-path.cooler=none
 *
 * A value is the text as typed, the unit it is in, and the unit shown where that differs. An example value is `~` and the
 * number in SI, so that a link opens as it was made even if the examples of a later version differ. Everything in a link
 * is somebody else's data: bounded, checked, and shown as text.
 */
export const version = "1";
const longest = 4000;
const longestText = 200;

const enc = (text: string) => encodeURIComponent(text).replaceAll("%20", "+");
const dec = (text: string) => decodeURIComponent(text.replaceAll("+", "%20"));

function writeEntry(entry: Entry): string {
  const value = entry.typed === null ? `~${entry.example}` : enc(entry.typed);
  const units = entry.shown === entry.unit ? [entry.unit] : [entry.unit, entry.shown];
  return [value, ...units.map(enc)].join(";");
}

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

function readLinkEntry(text: string, kind: Kind): Entry | null {
  const [value = "", unit = "", shown = unit, ...rest] = text.split(";");
  const offered: readonly string[] = kinds[kind].units;
  let units: readonly string[];
  let typed: string;
  try {
    units = [dec(unit), dec(shown)];
    typed = dec(value);
  } catch {
    return null;
  }
  const [of = "", as = ""] = units;
  if (rest.length > 0 || !offered.includes(of) || !offered.includes(as) || typed.length > longestText)
    return null;
  if (!typed.startsWith("~")) return { typed, example: Number.NaN, unit: of, shown: as };
  const example = Number(typed.slice(1));
  return Number.isFinite(example) && typed.length > 1 ? { typed: null, example, unit: of, shown: as } : null;
}

const isWithin = (x: SI, [least, most]: readonly [SI, SI]): boolean => x >= least && x <= most;

/** Whether an address part is a link of this site at all; `#eq-2.4` is not. */
export const isLink = (hash: string): boolean => /^#?[\w.-]+=/.test(hash);

/**
 * Reads an address part for some calculators of a page; `elsewhere` are the ids of the page's others, which read their
 * own parts. Never throws.
 */
export function readLink(
  hash: string,
  calculators: readonly Calculator[],
  elsewhere: readonly string[] = [],
): Opened {
  const unread: string[] = [];
  let system: UnitSystem | null = null;
  let barometer: Entry | null = null;
  const entries: Record<string, { fields: Record<string, Entry>; choices: Record<string, string> }> = {};
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
      barometer = readLinkEntry(value, "pressure");
      if (barometer && !readBarometer(barometer).ok) barometer = null;
      if (!barometer) unread.push("The barometer in the link could not be read.");
    } else {
      const [id = "", name = ""] = key.split(".", 2);
      if (elsewhere.includes(id)) continue;
      const calculator = calculators.find((c) => c.id === id);
      const input =
        calculator && Object.hasOwn(calculator.inputs, name) ? calculator.inputs[name] : undefined;
      if (!calculator || !input || (!isChoice(input) && input.barometer)) {
        unread.push(`“${key.slice(0, 40)}” in the link names nothing on this page.`);
        continue;
      }
      entries[id] ??= structuredClone(
        startEntries(calculator, system ?? "metric"),
      ) as (typeof entries)[string];
      const state = entries[id];
      if (isChoice(input)) {
        if (Object.hasOwn(input.options, value)) state.choices[name] = value;
        else unread.push(`“${input.label}” in the link could not be read. The example stands there.`);
        continue;
      }
      const entry = readLinkEntry(value, input.kind);
      const possible = entry?.typed !== null || isWithin(entry.example, input.limits);
      if (entry && possible)
        state.fields[name] = entry.typed === null ? entry : { ...entry, example: input.start };
      else unread.push(`“${input.label}” in the link could not be read. The example value stands there.`);
    }
  }
  return { system, barometer, entries, unread };
}
