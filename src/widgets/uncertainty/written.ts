import type { SI } from "../../../calc/quantity/domain-error.ts";
import { differenceUnit } from "../../../calc/quantity/plus-minus.ts";
import { fromSI, type UnitContext, unitOf } from "../../../calc/quantity/units.ts";
import { writeIn, writeNumber } from "../../../calc/quantity/write.ts";
import type { Way } from "../../calculators/engine/plus-minus.ts";
import { unitLabel } from "../unit-label.ts";

/** By how much a standard uncertainty is multiplied, and how that is told behind it. */
export const factorOf: Readonly<Record<Way, number>> = { expanded: 2, standard: 1 };
export const toldWay: Readonly<Record<Way, string>> = { expanded: "k = 2", standard: "standard" };

/** What a reader sees of the unit in which differences of a quantity are counted. */
export const differenceLabel = (unit: string): string => unitLabel(differenceUnit(unitOf(unit)));

/** A number with its unit, which a plain number has not. */
const withLabel = (number: string, label: string): string =>
  label === "" ? number : `${number}\u00a0${label}`;

/** A difference in SI, as it is read in a unit: to two figures, as uncertainties are, or to more. */
export const writeDifference = (difference: SI, unit: string, digits = 2): string =>
  withLabel(writeNumber(difference / unitOf(unit).factor, digits), differenceLabel(unit));

/** A value in the figures that its uncertainty leaves: both end at the same place. */
export function writeToPlace(value: SI, within: SI, unit: string, context: UnitContext): string {
  const [number, width] = [fromSI(value, unit, context), within / unitOf(unit).factor];
  if (number === 0 || !(width > 0)) return writeIn(value, unit, context);
  const places = Math.floor(Math.log10(Math.abs(number))) - Math.floor(Math.log10(width)) + 2;
  return writeNumber(number, Math.min(12, Math.max(1, places)));
}
