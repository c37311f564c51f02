import type { SI } from "./domain-error.ts";
import { fromSI, type UnitContext, unitOf } from "./units.ts";

const noBreakSpace = "\u00a0";
const thinNoBreakSpace = "\u202f";
const minus = "\u2212";

const mustBeFinite = (x: number) => {
  if (!Number.isFinite(x)) throw new RangeError(`only a finite number can be written, not ${x}`);
};

const superscript = (n: number) =>
  [...String(n)].map((c) => (c === "-" ? "⁻" : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(Number(c)))).join("");

/**
 * A number to read: `digits` significant figures (1 to 17) with the zeros that belong to them, a true minus, thousands
 * parted by a thin space from 10 000 on, and a power of ten from a million up and below a thousandth.
 * `writeNumber(99)` is `99.00`, `writeNumber(-0.000018, 2)` is `−1.8 × 10⁻⁵`. Throws `RangeError` unless `x` is finite.
 */
export function writeNumber(x: number, digits = 4): string {
  mustBeFinite(x);
  if (x === 0) return "0";
  const [mantissa = "", power = ""] = Math.abs(x)
    .toExponential(digits - 1)
    .split("e");
  const exponent = Number(power);
  const sign = x < 0 ? minus : "";
  if (exponent >= 6 || exponent < -3)
    return `${sign}${mantissa}${noBreakSpace}×${noBreakSpace}10${superscript(exponent)}`;
  const text = Number(`${mantissa}e${power}`).toFixed(Math.max(0, digits - 1 - exponent));
  return sign + (exponent < 4 ? text : text.replace(/^\d+(?=\d{3}\b)/, `$&${thinNoBreakSpace}`));
}

/** One decimal: the tenth of a degree that a thermometer is read to, wherever the zero of its scale stands. */
function writeTenths(x: number): string {
  mustBeFinite(x);
  if (Math.abs(x) >= 1e4) return writeNumber(x, 5);
  const text = Math.abs(x).toFixed(1);
  return x < 0 && Number(text) !== 0 ? minus + text : text;
}

/**
 * The number of an SI value in a unit, as results show it: to four figures, or to the tenth on a scale of temperature,
 * where figures would depend on where its zero stands; a small difference in K to three. `writeIn(399.5, "degC")` is `126.4`. Fails as `fromSI` does, and
 * with `RangeError` unless `value` is finite.
 */
export function writeIn(value: SI, unit: string, context: UnitContext = {}): string {
  const number = fromSI(value, unit, context);
  const { offset } = unitOf(unit);
  if (offset === undefined && unit !== "K") return writeNumber(number);
  // So few kelvins are a difference, of which a tenth may be all there is.
  return unit === "K" && Math.abs(number) < 10 ? writeNumber(number, 3) : writeTenths(number);
}

/** A written number without the zeros at its end that say nothing: `2.200` is `2.2`, `1.000 × 10⁻⁵` is `1 × 10⁻⁵`. */
export const trimZeros = (text: string): string =>
  text.replace(/(\.\d*?)0+(?!\d)/, "$1").replace(/\.(?!\d)/, "");

const withUnit = (number: string, unit: string): string => {
  const { label } = unitOf(unit);
  // Of all signs for units only those of an angle stand close to the number (SI brochure, 5.4.3, from memory).
  const gap = label === "°" || label === "" ? "" : noBreakSpace;
  return number + gap + label;
};

/**
 * An SI value to read with its unit, parted by a no-break space where it is no angle: `writeQuantity(99e3, "kPa", {}, 3)` is `99.0 kPa`.
 * Without `digits` it shows the figures of `writeIn`. Fails as `fromSI` and `writeNumber` do.
 */
export const writeQuantity = (value: SI, unit: string, context: UnitContext = {}, digits?: number): string =>
  withUnit(
    digits === undefined ? writeIn(value, unit, context) : writeNumber(fromSI(value, unit, context), digits),
    unit,
  );

/** Which side of a bound is accepted: it is the least that may be typed, or the most. */
export type BoundSide = "least" | "most";

/**
 * A bound: to six figures, so that a number rounded to four does not look like it, and without zeros that say nothing. With
 * a side it is rounded to that side, so that what is printed is accepted when it is typed. `writeBound(40_000, "kPa")` is
 * `40 kPa`, `writeBound(1.5789377, "kg/s", {}, 6, "most")` is `1.57893 kg/s`.
 */
export function writeBound(
  value: SI,
  unit: string,
  context: UnitContext = {},
  digits = 6,
  side?: BoundSide,
): string {
  const number = fromSI(value, unit, context);
  return withUnit(trimZeros(writeNumber(side ? roundedTo(side, number, digits) : number, digits)), unit);
}

/** A few last bits of a conversion are no reason to go to the next figure. */
const LAST_BITS = 1e-6;

function roundedTo(side: BoundSide, x: number, digits: number): number {
  if (x === 0) return 0;
  const figures = digits - 1 - Math.floor(Math.log10(Math.abs(x)));
  const scaled = x * 10 ** figures;
  const whole = side === "least" ? Math.ceil(scaled - LAST_BITS) : Math.floor(scaled + LAST_BITS);
  return Number(`${whole}e${-figures}`);
}

/**
 * A number as a person would type it: `99`, `0.74`, `101325`, `1e-7`. A number of at most eight figures stays as it is,
 * free of the last bits that a conversion leaves; a longer one is rounded to `digits` (1 to 8), so 99 kPa in psi is
 * `14.359`. What this writes reads back as the same text, and with five digits lies within 5 parts in 100 000 of `x`.
 * Throws `RangeError` where `x` is not finite, or rounds to what is not.
 */
export function writePlain(x: number, digits = 5): string {
  mustBeFinite(x);
  const figures = (n: number) => n.toExponential().replace(/e.*|\D/g, "").length;
  const clean = Number(x.toPrecision(12));
  const short = figures(clean) <= 8 ? clean : Number(x.toPrecision(digits));
  mustBeFinite(short);
  return String(short);
}
