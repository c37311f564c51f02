import { drawable, niceMarks, spanOf } from "./numbers.ts";
import { textWidth, wrap } from "./text.ts";
import type { RankingProps } from "./types.ts";

export interface Size {
  readonly wide: boolean;
  readonly width: number;
  readonly font: number;
}

export const wideSize: Size = { wide: true, width: 800, font: 15 };
export const narrowSize: Size = { wide: false, width: 350, font: 14 };

/** Without the digits that rounding makes: what is equal in theory is equal here. */
const settled = (value: number): number => Number(value.toPrecision(12));

/** The rows that have a value, the best first; equal ones in the order given. */
export function ranked({ rows, best = "highest" }: RankingProps) {
  const sign = best === "highest" ? -1 : 1;
  return rows
    .filter(({ value }) => drawable(value))
    .sort((a, b) => sign * (settled(a.value) - settled(b.value)));
}

/** Where the parts of a ranking stand: names, dots on one axis, numbers. */
export function layoutRanking(props: RankingProps, { wide, width, font }: Size) {
  const line = font + 3;
  const { unit } = props;
  const rows = ranked(props);
  const numberWidth = Math.max(0, ...rows.map(({ number }) => textWidth(number, font, true)));
  const names = rows.map(({ label, isChosen }) =>
    wrap(label, font, (wide ? 0.5 * width : width - 8) / (isChosen ? 1.08 : 1)),
  );
  const widthOf = (name: string, i: number) => textWidth(name, font, rows[i]?.isChosen);
  const nameWidth = Math.max(0, ...names.flatMap((lines, i) => lines.map((name) => widthOf(name, i))));
  const left = wide ? nameWidth + 28 : 8;
  const right = width - numberWidth - 22;

  const values = rows.map(({ value }) => value);
  const [low, high] = spanOf(values);
  const marks = niceMarks(low, high, wide ? 5 : 3);
  const ends = spanOf([low, high, ...marks.map(({ value }) => value)]);
  const spare = 0.06 * (ends[1] - ends[0]);
  const [from, to] = [ends[0] - spare, ends[1] + spare];
  const across = (value: number) => left + ((right - left) * (value - from)) / (to - from);

  const placed: { y: number; top: number; names: readonly string[] }[] = [];
  let foot = 6;
  for (const lines of names) {
    const h = lines.length * line + (wide ? 12 : 24);
    placed.push({ top: foot, y: wide ? foot + h / 2 : foot + h - 13, names: lines });
    foot += h;
  }
  const ticks = marks.map(({ value, text }) => ({ x: across(value), text, w: textWidth(text, font) }));
  const pitch = (ticks[1]?.x ?? width) - (ticks[0]?.x ?? 0);
  const every = Math.ceil((Math.max(0, ...ticks.map(({ w }) => w)) + 8) / pitch);
  const unitFrom = width - textWidth(unit, font) - 8;
  return {
    left,
    right,
    foot,
    line,
    rows: rows.map(({ value, number, isChosen = false }, i) => {
      const { y = 0, top = 0, names: lines = [] } = placed[i] ?? {};
      return {
        x: across(value),
        y,
        number,
        isChosen,
        names: lines.map((text, k) => ({
          text,
          x: 0,
          y: wide ? y + font / 3 + (k - (lines.length - 1) / 2) * line : top + (k + 1) * line - 2,
          w: widthOf(text, i),
        })),
      };
    }),
    ticks: ticks.map((tick, i) => ({
      ...tick,
      shown: i % every === 0 && tick.x > tick.w / 2 && tick.x + tick.w / 2 < unitFrom,
    })),
    height: foot + 10 + line,
  };
}
