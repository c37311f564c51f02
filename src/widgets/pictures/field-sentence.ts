import { type FieldData, type FieldMarks, marksOf } from "./field-marks.ts";
import { together } from "./text.ts";
import type { Show } from "./types.ts";

/** A height of the face in words; of passes side by side, which half and where in it. */
function heightInWords(y: number, { layout }: FieldData, isSecond = y >= 0.5): string {
  if (layout.kind !== "side by side") return upInWords(y);
  return isSecond ? `${upInWords(2 * y - 1)} of the second pass` : `${upInWords(2 * y)} of the first pass`;
}

function upInWords(y: number): string {
  if (y < 0.06) return "at the bottom";
  if (y > 0.94) return "at the top";
  return `${Math.round(100 * y)}\u00a0% of the way up`;
}

function throughInWords(x: number): string {
  if (x < 0.06) return "where the air enters";
  if (x > 0.94) return "where the air leaves";
  return `${Math.round(100 * x)}\u00a0% of the way through`;
}

/** Where the hot end is, in words. */
export function placeOf({ hotEnd }: FieldMarks, data: FieldData): string {
  const through = throughInWords(hotEnd.x);
  if (data.layout.kind === "along") return through;
  // Where one half of the face ends the other begins: its bank says which is meant.
  const isSecond = data.field.banks[hotEnd.bank]?.pass === 2;
  const height = hotEnd.isWholeHeight ? "all along the tubes" : heightInWords(hotEnd.y, data, isSecond);
  return `${height}, ${through}`;
}

/** The field as sentences: every temperature that the drawing marks, and where. */
export function describeField(data: FieldData, show: Show): string {
  const marks = marksOf(data);
  const { airOut, waterOut, hottest, coolest, isEven, hotEnd } = marks;
  const says = (T: number) => together(show(T)).replace(" ", "\u00a0");
  const leaves = isEven
    ? `leaves at ${says(airOut)} everywhere.`
    : `leaves at ${says(airOut)} on average: its hottest stripe, ${heightInWords(hottest.y, data)}, at ${says(hottest.T)}, ` +
      `its coolest, ${heightInWords(coolest.y, data)}, at ${says(coolest.T)}.`;
  const halves = "The two passes, which lie side by side, are drawn one above the other, the first below. ";
  return (
    `${data.layout.kind === "side by side" ? halves : ""}Air enters at ${says(data.hot)} and ${leaves} ` +
    `Water enters at ${says(data.cold)} and leaves at ${says(waterOut)}. ` +
    `The hot end, where air and water together are warmest, is ${placeOf(marks, data)}: ` +
    `there the air is at ${says(hotEnd.air)} and the water at ${says(hotEnd.water)}.`
  );
}
