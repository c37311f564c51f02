import { kindOfUnit } from "./dimension.ts";
import type { SI } from "./domain-error.ts";
import { type Kind, type KindInfo, kinds } from "./kinds.ts";
import { Refusal } from "./refusal.ts";
import { quote } from "./repeated.ts";
import { isPressure, type Named, unitsNamed } from "./unit-names.ts";
import { fromSI, toSI, type Unit, type UnitContext, unitOf } from "./units.ts";
import { writePlain } from "./write.ts";

/** Far beyond any quantity, and near enough to zero that a number stays finite in every unit. */
const largest = 1e250;

export const say = (number: string, unit: Unit): string =>
  `${number.replaceAll("-", "−")} ${unit.label}`.trimEnd();

/** What a unit measures, in plain words. */
const measures = (unit: Unit): string => {
  const kind = kindOfUnit(unit.id);
  return isPressure(unit) || !kind ? "pressure" : kinds[kind].name;
};

/** In a difference of temperatures the zero of the scale plays no part. */
const asDifference = new Map([
  ["degC", "K"],
  ["degF", "degF-d"],
  ["degR", "degF-d"],
]);

function typedUnit(rest: string, kind: Kind): { unit: Unit; counts: Named["counts"] } {
  const { candidates, counts } = unitsNamed(rest);
  const [first] = candidates;
  if (!first) throw new Refusal(`${quote(rest)} is not a unit known here.`);
  const fits = candidates.map((unit) =>
    kind === "temperatureDifference" ? unitOf(asDifference.get(unit.id) ?? unit.id) : unit,
  );
  const unit = fits.find(({ id }) => (kinds[kind] as KindInfo).units.includes(id));
  if (!unit) throw new Refusal(`${say("", first).trim()} is a unit of ${measures(first)}.`);
  if (counts && kind === "pressureDifference")
    throw new Refusal(
      `${quote(rest)} says what a pressure counts from, and a difference counts from nothing.`,
    );
  return { unit, counts };
}

/** Refuses what no barometer and no thermometer can show. */
export function mustBePossible(kind: Kind, value: SI, typed: string, unit: Unit, context: ReadContext): void {
  if (kind === "temperature" && value < 0)
    throw new Refusal(
      `${typed} is below absolute zero. ${say(writePlain(fromSI(0, unit.id)), unit)} and above is accepted.`,
      "whole",
    );
  const barometer = context.barometer ?? Number.POSITIVE_INFINITY;
  const absolute = kind === "gaugePressure" ? value + barometer : value;
  if ((kind !== "pressure" && kind !== "gaugePressure") || absolute > 0) return;
  if (kind === "pressure" && !unit.gauge)
    throw new Refusal(
      `${typed} is ${absolute < 0 ? "below" : "at"} a perfect vacuum. An absolute pressure above zero is accepted` +
        (context.isBarometer ? "." : `, or a reading from the barometer typed as ${typed} gauge.`),
      "whole",
    );
  if (context.isBarometer) return;
  const plain = unitOf(unit.id.replace("-g", ""));
  const bound = writePlain(fromSI(barometer, plain.id));
  throw new Refusal(
    `${typed} is ${absolute < 0 ? "below" : "at"} a perfect vacuum: the barometer is ${say(bound, plain)}. ` +
      `A gauge pressure above ${say(`-${bound}`, plain)} is accepted.`,
    "whole",
  );
}

/** Refuses a value that would not stay finite in every unit. */
export function mustBeComputable(value: SI, typed: string): void {
  if (!(Math.abs(value) < largest)) throw new Refusal(`${quote(typed)} is too large to compute with.`);
}

/** What a text is read against. */
export interface ReadContext extends UnitContext {
  /** What is typed is the barometer itself, from which gauges count. */
  readonly isBarometer?: boolean;
  /** The mass flow of dry air, kg/s, in a volume flow (m³/s) at a temperature (K) and an absolute pressure (Pa). */
  readonly massOfFlow?: (V_dot: SI, T: SI, p: SI) => SI;
}

/** The field that a text was typed into: what it takes, the unit it shows, and the whole text, to be quoted. */
export interface Field {
  readonly kind: Kind;
  readonly fieldUnit: string;
  readonly context: ReadContext;
  readonly text: string;
}

/** A number with its unit, as a field takes it. */
export interface Single {
  readonly value: SI;
  readonly number: number;
  readonly unit: Unit;
  /** How it was taken: “15 psi gauge”. */
  readonly shown: string;
}

/**
 * A number and the name of a unit typed behind it, as a field of `kind` takes it; without one it counts in `fieldUnit`.
 * Throws a Refusal where the unit measures something else, or where there can be no such quantity.
 */
export function single(number: number, typedName: string, { kind, fieldUnit, context, text }: Field): Single {
  const field = unitOf(fieldUnit);
  const named = typedName ? typedUnit(typedName, kind) : undefined;
  const plain = named?.unit ?? field;
  const countsFromBarometer = named && (named.counts ?? (field.gauge && "gauge")) === "gauge";
  const unit = kind === "pressure" && countsFromBarometer ? unitOf(`${plain.id}-g`) : plain;
  const isAbsoluteAsGauge = kind === "gaugePressure" && named?.counts === "absolute";
  const value = toSI(number, unit.id, context) - (isAbsoluteAsGauge ? toSI(0, `${unit.id}-g`, context) : 0);
  mustBeComputable(value, text);

  const typed = say(String(number), unit);
  const typedOnGauge = kind === "gaugePressure" && !isAbsoluteAsGauge ? `${typed} gauge` : typed;
  mustBePossible(kind, value, typedOnGauge, unit, context);

  const isBareAbsolute = named && kind === "pressure" && !unit.gauge;
  const shown = isAbsoluteAsGauge
    ? `${typed} absolute, so ${say(writePlain(fromSI(value, unit.id)), unit)} gauge`
    : isBareAbsolute
      ? `${typed} absolute`
      : typedOnGauge;
  return { value, number: isAbsoluteAsGauge ? fromSI(value, unit.id) : number, unit, shown };
}
