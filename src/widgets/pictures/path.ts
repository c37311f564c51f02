import type { Box } from "./boxes.ts";
import { r1 } from "./numbers.ts";

export type Point = readonly [x: number, y: number];

/** A path of straight pieces in relative commands; the rounding of one step never adds to the next. */
export function polyline(points: readonly Point[]): string {
  let [px, py] = [0, 0];
  return points
    .map((point, i) => {
      const [x, y] = [r1(point[0]), r1(point[1])];
      const step = i ? `l${r1(x - px)} ${r1(y - py)}` : `M${x} ${y}`;
      [px, py] = [x, y];
      return step;
    })
    .join("");
}

/** A line without the points that lie within `tolerance` of the straight piece which then takes their place. */
export function thin(points: readonly Point[], tolerance: number): readonly Point[] {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length < 3) return points;
  const [dx, dy] = [last[0] - first[0], last[1] - first[1]];
  const length = Math.hypot(dx, dy);
  let [most, at] = [tolerance, 0];
  points.forEach(([x, y], i) => {
    const [px, py] = [x - first[0], y - first[1]];
    // A ring ends where it begins: there is no piece, only a point.
    const away = length > 0 ? Math.abs(px * dy - py * dx) / length : Math.hypot(px, py);
    if (away > most) [most, at] = [away, i];
  });
  if (at === 0) return [first, last];
  return [...thin(points.slice(0, at + 1), tolerance), ...thin(points.slice(at), tolerance).slice(1)];
}

/** The pieces of a line that lie inside the frame, cut at its edges. A missing point ends a piece. */
export function clip(points: readonly (Point | undefined)[], frame: Box): Point[][] {
  const runs: Point[][] = [];
  points.forEach((b, i) => {
    const a = points[i - 1];
    const cut = a && b && within(a, b, frame);
    if (!cut) return;
    const run = runs.at(-1);
    if (run?.at(-1) === cut[0]) run.push(cut[1]);
    else runs.push(cut);
  });
  return runs;
}

/** Liang and Barsky: the span of the parameter along a–b in which all four edges of the frame are kept. */
function within(a: Point, b: Point, { x, y, w, h }: Box): [Point, Point] | undefined {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  let [from, to] = [0, 1];
  for (const [towards, room] of [
    [-dx, a[0] - x],
    [dx, x + w - a[0]],
    [-dy, a[1] - y],
    [dy, y + h - a[1]],
  ] as const) {
    if (towards < 0) from = Math.max(from, room / towards);
    else if (towards > 0) to = Math.min(to, room / towards);
    else if (room < 0) return undefined;
  }
  // Held to the frame, since a cut far from both ends of a long piece loses digits.
  const at = (u: number): Point => [
    Math.min(x + w, Math.max(x, a[0] + dx * u)),
    Math.min(y + h, Math.max(y, a[1] + dy * u)),
  ];
  return from > to ? undefined : [from ? at(from) : a, to < 1 ? at(to) : b];
}

/** Lines at 45° across a box, `apart` pixels from one another. */
export function hatch({ x, y, w, h }: Box, apart: number): string {
  let d = "";
  const step = apart * Math.SQRT2;
  for (let k = step - ((x + y) % step); k < w + h; k += step) {
    d += polyline([
      [x + Math.min(k, w), y + Math.max(0, k - w)],
      [x + Math.max(0, k - h), y + Math.min(k, h)],
    ]);
  }
  return d;
}
