import type { Shown } from "./types.ts";

/** About how wide a line of the text face is, in the unit of `size`. A little generous, for keeping labels apart. */
export function textWidth(text: string, size: number, bold = false): number {
  let em = 0;
  for (const c of text) {
    em += /[\s.,:;'()ijlt|⁻⁰¹²³⁴-⁹]/.test(c) ? 0.3 : /[mwMW%×]/.test(c) ? 0.82 : /[A-Z]/.test(c) ? 0.68 : 0.5;
  }
  return em * size * (bold ? 1.08 : 1);
}

/** A text as a sentence of its own: with a full stop, unless it ends in one already. */
export const asSentence = (text: string): string => (/[.?]$/.test(text) ? text : `${text}.`);

/** A number with its unit, if it has one. */
export const together = ({ number, unit }: Shown): string => (unit ? `${number} ${unit}` : number);

/** Words in lines no wider than `width`; a longer word keeps a line of its own. */
export function wrap(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = `${last} ${word}`;
    if (last !== undefined && textWidth(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
