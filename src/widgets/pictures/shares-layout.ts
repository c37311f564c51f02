import type { Box } from "./boxes.ts";
import { drawable } from "./numbers.ts";
import { textWidth, together, wrap } from "./text.ts";
import type { Share, SharesProps } from "./types.ts";

export interface Size {
  readonly wide: boolean;
  readonly width: number;
  readonly font: number;
}

export const wideSize: Size = { wide: true, width: 800, font: 15 };
export const narrowSize: Size = { wide: false, width: 350, font: 14 };

/** How thick a bar is. */
const thickness = 18;

/** A sum that differs from its parts by less than this part of the drawing is their sum: the rest is rounding. */
const tolerance = 1e-6;

/** The parts that have a value, and the sum where it has one. */
export function counted({ rows, sum }: SharesProps) {
  const parts = rows.filter(({ value }) => drawable(value));
  return {
    parts,
    sum: drawable(sum.value) ? sum : undefined,
    /** Some of them take away: then each says its sign. */
    isSigned: parts.some(({ value }) => value < 0),
  };
}

/** A number with its unit, and with its sign where the parts have different ones. */
export const written = ({ value, number }: Share, unit: string, isSigned: boolean): string =>
  (isSigned && value > 0 ? "+" : "") + together({ number, unit });

/** Where the parts of a sum stand: each bar begins where the one before ended, the sum under a rule. */
export function layoutShares(props: SharesProps, { wide, width, font }: Size) {
  const { parts, sum, isSigned } = counted(props);
  const line = font + 3;
  let end = 0;
  const rows = parts.map((part) => {
    const from = end;
    end += part.value;
    return { ...part, from, to: end, text: written(part, props.unit, isSigned), isSum: false };
  });
  const ends = [0, end, ...rows.map(({ to }) => to), sum?.value ?? 0];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const bars = [
    ...rows,
    ...(sum ? [{ ...sum, from: 0, to: sum.value, text: written(sum, props.unit, false), isSum: true }] : []),
  ];

  const names = bars.map(({ label, isSum }) =>
    wrap(label, font, (wide ? 0.4 * width : width - 8) / (isSum ? 1.08 : 1)),
  );
  const nameWidth = Math.max(
    0,
    ...names.flatMap((lines, i) => lines.map((text) => textWidth(text, font, bars[i]?.isSum))),
  );
  const left = wide ? nameWidth + 20 : 2;
  const right = width - Math.max(0, ...bars.map(({ text }) => textWidth(text, font, true))) - 10;
  const across = (value: number) => left + (right - left) * ((value - low) / (high > low ? high - low : 1));

  let foot = 4;
  const placed = bars.map(({ from, to, text, label, value, isSum }, i) => {
    const lines = names[i] ?? [];
    const over = wide ? 0 : lines.length * line + 4;
    const h = wide ? Math.max(lines.length * line, thickness) + 12 : over + thickness + 12;
    const rule = isSum && i > 0 ? foot + 3 : undefined;
    const top = foot + (rule === undefined ? 0 : wide ? 8 : 12);
    foot = top + h;
    const middle = wide ? top + h / 2 : top + over + thickness / 2;
    const [a, b] = [across(from), across(to)];
    const box: Box = { x: Math.min(a, b), y: middle - thickness / 2, w: Math.abs(b - a), h: thickness };
    return {
      label,
      text,
      isSum,
      /** A part that takes away. */
      isLoss: !isSum && value < 0,
      box,
      rule,
      /** Where it begins and ends. */
      ends: [a, b] as const,
      number: { x: Math.max(a, b) + 8, y: middle + font / 3, w: textWidth(text, font, isSum) },
      names: lines.map((words, k) => ({
        text: words,
        y: wide ? middle + font / 3 + (k - (lines.length - 1) / 2) * line : top + (k + 1) * line - 4,
      })),
    };
  });
  foot -= wide ? 0 : 8;
  const joins = placed.slice(1).flatMap(({ box, isSum, ends }, i) => {
    const before = placed[i];
    const isTheirs = sum && Math.abs(sum.value - end) <= tolerance * (high - low);
    if (!before || (isSum && !isTheirs)) return [];
    return [
      { x: isSum ? ends[1] : ends[0], y: before.box.y + thickness, h: box.y - before.box.y - thickness },
    ];
  });
  return { bars: placed, joins, zero: across(0), foot, height: foot + line + 4 };
}
