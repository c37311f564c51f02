import { DomainError, type SI } from "./domain-error.ts";
import { type Kind, type KindInfo, kinds } from "./kinds.ts";
import { readLeadingNumber } from "./number-text.ts";
import { isPressure, type Named, unitsNamed } from "./unit-names.ts";
import { fromSI, toSI, type Unit, type UnitContext, unitOf } from "./units.ts";
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
    }
  | { readonly ok: false; readonly says: string };

/** Far beyond any quantity, and near enough to zero that a number stays finite in every unit. */
const largest = 1e250;
const longestText = 200;

/** The sentence that refuses a text. It never leaves this file. */
class Refusal extends Error {}

const quote = (text: string): string => {
  const letters = [...text.replace(/\p{C}/gu, "")];
  return `“${letters.slice(0, 30).join("")}${letters.length > 30 ? "…" : ""}”`;
};

const say = (number: string, unit: Unit): string => `${number.replaceAll("-", "−")} ${unit.label}`.trimEnd();

function accepted(kind: Kind): string {
  const labels = kinds[kind].units.map((id) => unitOf(id).label);
  const named = labels.filter(Boolean).slice(0, 6);
  if (!named.length) return "This field takes a plain number, without a unit.";
  const last = named.pop();
  // A field of absolute pressure takes gauge readings too.
  const name = kind === "pressure" ? "pressure" : kinds[kind].name;
  const list = named.length ? `${named.join(", ")} or ${last}` : last;
  return `This field takes ${name}, ${labels.includes("") ? "as a plain number or " : ""}in ${list}.`;
}

/** What a unit measures, in plain words. */
const measures = (unit: Unit): string =>
  isPressure(unit)
    ? "pressure"
    : (Object.values<KindInfo>(kinds).find((kind) => kind.units.includes(unit.id))?.name ?? "another kind");

/** In a difference of temperatures the zero of the scale plays no part. */
const asDifference = new Map([
  ["degC", "K"],
  ["degF", "degF-d"],
  ["degR", "degF-d"],
]);

function typedUnit(text: string, rest: string, kind: Kind): { unit: Unit; counts: Named["counts"] } {
  const { candidates, counts } = unitsNamed(rest);
  const [first] = candidates;
  if (!first) {
    const isArithmetic = /^[-+−–*/×÷^±]|[-+−–*/×÷±x]\s*[\d.(]/i.test(rest);
    throw new Refusal(
      isArithmetic
        ? `${quote(text)} is more than one number. A single number is accepted. ${accepted(kind)}`
        : `${quote(rest)} is not a unit known here. ${accepted(kind)}`,
    );
  }
  const fits = candidates.map((unit) =>
    kind === "temperatureDifference" ? unitOf(asDifference.get(unit.id) ?? unit.id) : unit,
  );
  const unit = fits.find(({ id }) => (kinds[kind] as KindInfo).units.includes(id));
  if (!unit) throw new Refusal(`${say("", first).trim()} is a unit of ${measures(first)}. ${accepted(kind)}`);
  if (counts && kind === "pressureDifference")
    throw new Refusal(
      `${quote(rest)} says what a pressure counts from, and a difference counts from nothing. ${accepted(kind)}`,
    );
  return { unit, counts };
}

/** Refuses what no barometer and no thermometer can show. */
function mustBePossible(kind: Kind, value: SI, typed: string, unit: Unit, context: UnitContext): void {
  if (kind === "temperature" && value < 0)
    throw new Refusal(
      `${typed} is below absolute zero. ${say(writePlain(fromSI(0, unit.id)), unit)} and above is accepted.`,
    );
  const barometer = context.barometer ?? Number.POSITIVE_INFINITY;
  const absolute = kind === "gaugePressure" ? value + barometer : value;
  if ((kind !== "pressure" && kind !== "gaugePressure") || absolute > 0) return;
  if (kind === "pressure" && !unit.gauge)
    throw new Refusal(
      `${typed} is ${absolute < 0 ? "below" : "at"} a perfect vacuum. An absolute pressure above zero is accepted, ` +
        `or a reading from the barometer typed as ${typed} gauge.`,
    );
  const plain = unitOf(unit.id.replace("-g", ""));
  const bound = writePlain(fromSI(barometer, plain.id));
  throw new Refusal(
    `${typed} is ${absolute < 0 ? "below" : "at"} a perfect vacuum: the barometer is ${say(bound, plain)}. ` +
      `A gauge pressure above ${say(`-${bound}`, plain)} is accepted.`,
  );
}

function read(text: string, kind: Kind, fieldUnit: string, context: UnitContext): Reading {
  if (text.length > longestText)
    throw new Refusal(`The text is ${text.length} characters long. At most ${longestText} are accepted.`);
  const trimmed = text.trim();
  if (!trimmed) throw new Refusal(`Nothing is entered. ${accepted(kind)}`);
  const leading = readLeadingNumber(trimmed);
  if (!leading) throw new Refusal(`${quote(trimmed)} is not a number. ${accepted(kind)}`);
  const { number, rest, isDoubtful, trouble } = leading;
  if (trouble) throw new Refusal(`${quote(trimmed)} is ${trouble} to compute with. ${accepted(kind)}`);

  const field = unitOf(fieldUnit);
  const named = rest ? typedUnit(trimmed, rest, kind) : undefined;
  const plain = named?.unit ?? field;
  const countsFromBarometer = named && (named.counts ?? (field.gauge && "gauge")) === "gauge";
  const unit = kind === "pressure" && countsFromBarometer ? unitOf(`${plain.id}-g`) : plain;
  const isAbsoluteAsGauge = kind === "gaugePressure" && named?.counts === "absolute";
  const value = toSI(number, unit.id, context) - (isAbsoluteAsGauge ? toSI(0, `${unit.id}-g`, context) : 0);
  if (!(Math.abs(value) < largest))
    throw new Refusal(`${quote(trimmed)} is too large to compute with. ${accepted(kind)}`);

  const typed = say(String(number), unit);
  const typedOnGauge = kind === "gaugePressure" && !isAbsoluteAsGauge ? `${typed} gauge` : typed;
  mustBePossible(kind, value, typedOnGauge, unit, context);

  const isBareAbsolute = named && kind === "pressure" && !unit.gauge;
  const shown = isAbsoluteAsGauge
    ? `${typed} absolute, so ${say(writePlain(fromSI(value, unit.id)), unit)} gauge`
    : isBareAbsolute
      ? `${typed} absolute`
      : typedOnGauge;
  const isWorthSaying =
    isDoubtful || (named && rest !== field.label && !(shown === typed && rest === unit.label));
  return {
    ok: true,
    value,
    number: isAbsoluteAsGauge ? fromSI(value, unit.id) : number,
    unit: unit.id,
    ...(isWorthSaying && { understood: `Read as ${shown}.` }),
  };
}

/**
 * Reads what somebody typed into a field of `kind` that shows `unit`: a number, or a number with a unit, which then
 * wins over the field's. A unit of pressure that does not say what it counts from counts as the field does. Commas,
 * spaces, true minus signs and powers of ten are read as people write them; arithmetic is not read yet.
 *
 * `context.barometer` is in Pa; gauge readings are refused without it. Never throws for a text: what cannot be read or
 * cannot exist (below absolute zero, below a perfect vacuum) comes back as a sentence. Bounds of a single field are
 * not checked here. `unit` has to be the id of a unit that the kind offers.
 *
 * `readQuantity("15 psig", "pressure", "kPa", { barometer: 99e3 })` has the value 202 421 Pa.
 */
export function readQuantity(text: string, kind: Kind, unit: string, context: UnitContext = {}): Reading {
  try {
    return read(text, kind, unit, context);
  } catch (error) {
    if (error instanceof Refusal || error instanceof DomainError) return { ok: false, says: error.message };
    throw error;
  }
}
