import { writeNumber } from "../quantity/write.ts";

const bracketsMinus = new Set(["term", "factor", "base"]);

/**
 * A number as it stands in a formula. `at` is the position that its place was typeset for: a negative number gets
 * brackets after a sign and as a factor, and so does a power of ten where a power is taken or a slash stands before it.
 * `slotText(-0.5, "term")` is "(−0.5000)". Throws `RangeError` unless `value` is finite.
 */
export function slotText(value: number, at: string, digits?: number): string {
  const text = writeNumber(value, digits);
  const brackets = (value < 0 && bracketsMinus.has(at)) || (at === "base" && text.includes("×"));
  return brackets ? `(${text})` : text;
}
