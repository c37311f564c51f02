import { calculated, isCalculation } from "./calculation.ts";
import { DomainError, type SI } from "./domain-error.ts";
import { type Kind, kinds } from "./kinds.ts";
import { readLeadingNumber } from "./number-text.ts";
import { plusMinusParts, uncertaintyOf, withUnitOf } from "./plus-minus.ts";
import { Refusal } from "./refusal.ts";
import { quote } from "./repeated.ts";
import { type Field, type ReadContext, type Single, say, single } from "./single-quantity.ts";
import { isStated, statedMassFlow } from "./stated-conditions.ts";
import { unitsNamed } from "./unit-names.ts";
import { unitOf } from "./units.ts";
import { writePlain } from "./write.ts";

/**
 * What a text was read as: `number` of `unit`, which is `value` in SI. `understood`, where there is one, is a sentence
 * that says how the text was taken. A text that cannot be read gets `says`: what is so, then what is accepted.
 */
export type Reading =
  | {
      readonly ok: true;
      readonly value: SI;
      readonly number: number;
      readonly unit: string;
      readonly understood?: string;
      /** The uncertainty typed behind ±, in SI: of a temperature in K. */
      readonly within?: SI;
    }
  | { readonly ok: false; readonly says: string };

const longestText = 200;

/** What a field of this kind takes, as a sentence. */
function accepted(kind: Kind, { isBarometer }: ReadContext): string {
  const labels = kinds[kind].units
    .map((id) => unitOf(id))
    .filter(({ gauge }) => !(isBarometer && gauge))
    .map(({ label }) => label);
  const named = labels.filter(Boolean).slice(0, 6);
  if (!named.length) return "This field takes a plain number, without a unit.";
  const last = named.pop();
  // A field of absolute pressure takes gauge readings too.
  const name = kind === "pressure" ? "pressure" : kinds[kind].name;
  const list = named.length ? `${named.join(", ")} or ${last}` : last;
  return `This field takes ${name}, ${labels.includes("") ? "as a plain number or " : ""}in ${list}.`;
}

const reading = ({ value, number, unit, shown }: Single, isWorthSaying: boolean): Reading => ({
  ok: true,
  value,
  number,
  unit: unit.id,
  ...(isWorthSaying && { understood: `Read as ${shown}.` }),
});

/** A value and, behind ±, how far off it may be. */
function withUncertainty({ value, within }: { value: string; within: string }, field: Field): Reading {
  const { kind, fieldUnit, context } = field;
  const found = read(withUnitOf(value, within, kind), kind, fieldUnit, context);
  if (!found.ok) return found;
  const unit = unitOf(found.unit);
  const shown = say(writePlain(found.number), unit);
  const off = uncertaintyOf(within, { ...found, unit, shown }, field);
  return { ...found, within: off.value, understood: `Read as ${shown}, give or take ${off.shown}.` };
}

function read(text: string, kind: Kind, fieldUnit: string, context: ReadContext): Reading {
  if (text.length > longestText)
    throw new Refusal(
      `The text is ${text.length} characters long. At most ${longestText} are accepted.`,
      "whole",
    );
  const trimmed = text.trim();
  if (!trimmed) throw new Refusal(`Nothing is entered.`);
  const field = { kind, fieldUnit, context, text: trimmed };
  const parts = plusMinusParts(trimmed);
  if (parts) return withUncertainty(parts, field);
  if (isStated(trimmed)) return reading(statedMassFlow(field), true);
  const leading = readLeadingNumber(trimmed);
  const isSingle = leading && (!leading.rest || unitsNamed(leading.rest).candidates.length > 0);
  if (!isSingle && isCalculation(trimmed)) return reading(calculated(field), true);
  if (!leading) throw new Refusal(`${quote(trimmed)} is not a number.`);
  const { number, rest, isDoubtful, trouble } = leading;
  if (trouble) throw new Refusal(`${quote(trimmed)} is ${trouble} to compute with.`);

  const found = single(number, rest, field);
  const isAsTyped = found.shown === say(String(number), found.unit) && rest === found.unit.label;
  return reading(found, isDoubtful || (rest !== "" && rest !== unitOf(fieldUnit).label && !isAsTyped));
}

/**
 * Reads what somebody typed into a field of `kind` that shows `unit`: a number, a number with a unit, which then wins
 * over the field's, or a calculation (`14.7 psi + 2 bar`, `3/8 in`, `10 kW / (4.19 kJ/(kg K) * 5 K)`), whose kind is checked. A
 * mass flow may be a volume flow at stated conditions (`1,200 cfm at 60 °F 14.7 psi`). A unit of pressure that does not
 * say what it counts from counts as the field does. Commas, spaces, true minus signs and powers of ten are read as people
 * write them.
 *
 * `context.barometer` is in Pa; gauge readings are refused without it. Where what is typed is the barometer itself, no
 * sentence offers a gauge. Never throws for a text: what cannot be read or
 * cannot exist (below absolute zero, below a perfect vacuum) comes back as a sentence. Bounds of a single field are
 * not checked here. `unit` has to be the id of a unit that the kind offers.
 *
 * `readQuantity("15 psig", "pressure", "kPa", { barometer: 99e3 })` has the value 202 421 Pa.
 */
export function readQuantity(text: string, kind: Kind, unit: string, context: ReadContext = {}): Reading {
  try {
    return read(text, kind, unit, context);
  } catch (error) {
    if (error instanceof DomainError) return { ok: false, says: error.message };
    if (!(error instanceof Refusal)) throw error;
    const says = error.isWhole ? error.message : `${error.message} ${accepted(kind, context)}`;
    return { ok: false, says };
  }
}
