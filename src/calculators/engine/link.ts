import { defaultUnit, type UnitSystem } from "../../../calc/quantity/kinds.ts";
import { type Calculator, type Field, isChoice } from "./calculator.ts";
import type { Entries, Entry, Surroundings, Want } from "./entry.ts";
import { version } from "./former-examples.ts";
import { type PlusMinus, usual } from "./plus-minus.ts";
import { isShown } from "./shown.ts";

/*
 * The state of a page in its address, after `#`:
 *
 *     v=2&units=metric&barometer=99.0;kPa&charge-path.T_0=86;degF;degC&charge-path.r=2.4&charge-path.cooler=none
 *
 * A value is the text as typed, the unit it is in unless it is a plain number, and the unit shown where that differs. What
 * stands as in the example is left out: the version says which examples are meant. An example of another value is `~` and
 * the number in SI. The unit in which a result is shown stands as `charge-path.T_m.in=degF`, where it was chosen. A wanted
 * result stands as `charge-path.want=rho_m;r;2.5;kg/m3;held`: the result, the input to be found, what was typed. How ± is meant stands as
 * `charge-path.pm=standard;expanded;T_2;T_3;0.9`: in fields, in results, then pairs whose errors go together. Everything
 * in a link is somebody else's data: bounded, checked, and shown as text.
 */

// A typed `~` is written as its code, so that only an example value begins with one.
const enc = (text: string) =>
  encodeURIComponent(text.toWellFormed())
    .replaceAll("%20", "+")
    .replaceAll("%2F", "/")
    .replaceAll("%2C", ",")
    .replaceAll("~", "%7E");

/** The unit of an entry that names none. */
export const plainNumber = "1";

function writeEntry(entry: Entry): string {
  const value = entry.typed === null ? `~${entry.example}` : enc(entry.typed);
  const units = entry.shown === entry.unit ? [entry.unit] : [entry.unit, entry.shown];
  return [value, ...(units.join() === plainNumber ? [] : units.map(enc))].join(";");
}

const writeWant = ({ result, input, typed, unit, shown, isHeld }: Want): string =>
  [result, input, writeEntry({ typed, example: 0, unit, shown }), ...(isHeld ? ["held"] : [])].join(";");

const writePlusMinus = ({ means, shows, together }: PlusMinus): string =>
  [means, shows, ...together.flatMap(({ a, b, typed }) => [a, b, enc(typed)])].join(";");

const isUsual = ({ means, shows, together }: PlusMinus): boolean =>
  means === usual.means && shows === usual.shows && together.length === 0;

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
    if (entries.pm && !isUsual(entries.pm)) parts.push(`${calculator.id}.pm=${writePlusMinus(entries.pm)}`);
    if (entries.want) parts.push(`${calculator.id}.want=${writeWant(entries.want)}`);
  }
  return parts.join("&");
}

/** Whether an address part is a link of this site at all; `#eq-2.4` is not. */
export const isLink = (hash: string): boolean => /^#?[\w.-]+=/.test(hash);
