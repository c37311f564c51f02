import { leadingUnit } from "./expression.ts";
import type { Kind } from "./kinds.ts";
import { readLeadingNumber } from "./number-text.ts";
import { Refusal } from "./refusal.ts";
import { quote } from "./repeated.ts";
import { type Field, type Single, single } from "./single-quantity.ts";
import type { Unit } from "./units.ts";

const sign = /^(.*?\S)\s*(?:±|\+\/[-−])\s*(\S.*)$/su;

/** The two sides of `45 ± 2 °C`; also typed as `+/-`. */
export function plusMinusParts(
  text: string,
): { readonly value: string; readonly within: string } | undefined {
  const [, value, within] = sign.exec(text) ?? [];
  return value === undefined || within === undefined ? undefined : { value, within };
}

/** What a difference of two such quantities is. */
const differenceOf: Partial<Record<Kind, Kind>> = {
  temperature: "temperatureDifference",
  pressure: "pressureDifference",
  gaugePressure: "pressureDifference",
};

/** The unit in which differences are counted of what is counted in this one: K where it is °C. */
export const differenceUnit = ({ id }: Unit): string =>
  ({ degC: "K", degF: "degF-d", degR: "degF-d" })[id] ?? id.replace(/-g$/, "");

interface Within {
  readonly number: number;
  readonly unit: string;
}

function readWithin(text: string): Within {
  const leading = readLeadingNumber(text);
  if (!leading || leading.trouble)
    throw new Refusal(`Behind ± a number is wanted, and ${quote(text)} is none.`, "whole");
  if (leading.number < 0) throw new Refusal("An uncertainty is zero or more.", "whole");
  const unit = leadingUnit(leading.rest)?.typed ?? "";
  if (unit !== leading.rest)
    throw new Refusal(`Behind ± stands one number with its unit, and ${quote(text)} is more.`, "whole");
  return { number: leading.number, unit };
}

const isPerCent = (unit: string): boolean => /^(?:%|percent|pct)$/i.test(unit);

/** The text of the value with the unit that stands behind its uncertainty, where it has none: `45` of `45 ± 2 °C`. */
export function withUnitOf(value: string, within: string, kind: Kind): string {
  const { unit } = readWithin(within);
  const hasOwn = readLeadingNumber(value)?.rest !== "";
  if (hasOwn || !unit) return value;
  if (!isPerCent(unit)) return `${value} ${unit}`;
  if (kind === "fraction")
    throw new Refusal(
      "Type 0.85 ± 0.02, or 85 % ± 2 %: one way for both, so that it is plain what is meant.",
      "whole",
    );
  return value;
}

/**
 * The uncertainty behind a value that was read, in SI: in the unit typed there, in that of the value, or in per cent of it.
 * Throws a Refusal where it measures something else, or where per cent would depend on the zero of a scale.
 */
export function uncertaintyOf(typed: string, of: Single, { kind, context, text }: Field): Single {
  const within = readWithin(typed);
  const isRelative = isPerCent(within.unit) && kind !== "fraction";
  if (isRelative && kind === "temperature")
    throw new Refusal(
      "Per cent of a temperature depends on where its scale begins. Type the uncertainty in K, or in °F.",
      "whole",
    );
  const number = isRelative ? (within.number / 100) * Math.abs(of.number) : within.number;
  return single(number, isRelative ? "" : within.unit, {
    kind: differenceOf[kind] ?? kind,
    fieldUnit: differenceUnit(of.unit),
    context,
    text,
  });
}
