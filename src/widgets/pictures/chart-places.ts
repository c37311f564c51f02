import type { Box } from "./boxes.ts";
import type { Outline, Places } from "./chart-labels.ts";
import type { Point } from "./path.ts";

interface Curve {
  readonly runs: readonly (readonly Point[])[];
  readonly outline: Outline;
}

const isSpan = (span: Point | readonly never[]): span is Point => span.length === 2;

/** Around a mark, over it and under it. */
export const besideMark =
  ([x, y]: Point): Places =>
  (w, h) =>
    [8, -8 - h, 20, -20 - h, -36 - h, 36].flatMap((dy, i) =>
      [10, -10 - w, -w / 2].map((dx, j) => [x + dx, y + dy, (i + j) / 8] as const),
    );

/** Heights for a label, from the top of the room to its foot. */
const heights = (room: Box, h: number, line: number): readonly number[] =>
  Array.from({ length: Math.max(1, Math.floor((room.h - h) / line) + 1) }, (_, i) => room.y + 2 + i * line);

/** Beside an upright line, best on one side of it (1 right, −1 left) by so much, and at the top. */
export const besideLine =
  (x: number, side: 1 | -1, room: Box, line: number, better: number): Places =>
  (w, h) =>
    heights(room, h, line).flatMap((y, i) =>
      [side, -side].map(
        (s, j) => [s > 0 ? x + 6 : x - 6 - w, y, i / 8 + j / 2 - (s === side ? better : 0), s < 0] as const,
      ),
    );

/** In a band where it is wide enough, in its middle or at one of its edges, else beside it; best at the top. */
export const inBand =
  ({ x, w: wide }: Box, room: Box, line: number): Places =>
  (w, h) => {
    const right = x + wide;
    const fits = w + 8 <= wide;
    const inside = fits ? [x + (wide - w) / 2, x + 4, right - w - 4] : [x + (wide - w) / 2];
    return heights(room, h, line).flatMap((y, i) => [
      ...inside.map((at, j) => [at, y, i / 8 + j / 8 + (fits ? 0 : 0.6)] as const),
      [right + 6, y, i / 8 + (fits ? 3 : 0)] as const,
      [x - 6 - w, y, i / 8 + (fits ? 3.1 : 0.1), true] as const,
    ]);
  };

/** How much worse a place is where the curve lies on another: a name there is nobody's. */
const coincides = 4;

/** Along a curve, over it, under it and beside it; best near its end, and where other curves are far. */
export function besideCurve(
  { runs, outline }: Curve,
  curves: readonly Curve[],
  room: Box,
  line: number,
): Places {
  const from = runs[0]?.[0]?.[0];
  const to = runs.at(-1)?.at(-1)?.[0];
  if (from === undefined || to === undefined) return () => [];

  const others = (left: number, right: number) =>
    curves
      .flatMap((curve) => (curve.outline === outline ? [] : [curve.outline(left, right) ?? []]))
      .filter(isSpan);

  /** How much it could be thought that a label names another curve: nothing where the others are a line of text away. */
  const doubt = ([high, low]: Point, left: number, right: number) => {
    const gaps = others(left, right).map((other) => Math.max(0, other[0] - low, high - other[1]));
    return Math.max(0, 1 - Math.min(...gaps, line) / line);
  };

  /** The same for the curve itself, on average over some places. */
  const lost = (...xs: readonly number[]) => {
    const doubts = xs.flatMap((x) => [outline(x, x) ?? []].filter(isSpan).map((own) => doubt(own, x, x)));
    return doubts.reduce((sum, one) => sum + one / doubts.length, 0);
  };

  /** Another curve lies between the label at this height and its own curve. */
  const isParted = ([high, low]: Point, [top, foot]: Point, left: number, right: number) =>
    others(left, right).some(([otherHigh, otherLow]) =>
      foot <= high
        ? otherHigh > foot && (otherHigh < high - 0.5 || otherLow < low - 0.5)
        : otherLow < top && (otherLow > low + 0.5 || otherHigh > high + 0.5),
    );

  return (w, h) =>
    Array.from({ length: 13 }, (_, k) => k / 12).flatMap((k) => {
      const x = to + (from - to) * k;
      const over = Math.max(room.x, Math.min(room.x + room.w - w, x - w / 2));
      // As wide as labels keep clear of curves: a steep one is higher and lower there.
      const [high, low] = outline(over - 2, over + w + 2) ?? [0, 0];
      const [here = 0] = outline(x, x) ?? [];
      const along = Math.abs(k - 0.15) + (low - high) / 30 + coincides * lost(over, over + w / 2, over + w);
      const beside = k + 0.8 + coincides * lost(x);
      const parted = (py: number) => (isParted([high, low], [py, py + h], over, over + w) ? 4 : 0);
      const places = [
        [over, high - h - 3, along + parted(high - h - 3)],
        [over, low + 3, along + 0.1 + parted(low + 3)],
        [x + 9, here - h / 2, beside],
        [x - 9 - w, here - h / 2, beside],
      ] as const;
      return places.map(([px, py, worse]) => [px, py, worse + doubt([py, py + h], px, px + w)] as const);
    });
}
