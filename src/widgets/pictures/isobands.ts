import { contours } from "d3-contour";
import type { Point } from "./path.ts";

/** Means of equal cells, row by row from the bottom, as parts of the span between two temperatures: 0 to 1. */
export interface Cells {
  readonly columns: number;
  readonly rows: number;
  readonly values: ArrayLike<number>;
}

/** Where the cells are at least so warm: rings from 0 to 1 across and up, outer ones and holes. */
export function ringsAbove(cells: Cells, level: number): Point[][] {
  const { width, height, values } = withEdges(cells);
  const across = (at: number) => share(at - 0.5, cells.columns);
  const up = (at: number) => share(at - 0.5, cells.rows);
  return contours()
    .size([width, height])
    .contour(values, level)
    .coordinates.flat()
    .map((ring) => ring.map(([x = 0, y = 0]): Point => [across(x), up(y)]));
}

/** Where the node number `at` of `withEdges` stands, from 0 to 1: the first and last on the edges, the others amid cells. */
function share(at: number, count: number): number {
  if (at <= 1) return Math.max(0, at) / 2 / count;
  if (at >= count) return 1 - Math.max(0, count + 1 - at) / 2 / count;
  return (at - 0.5) / count;
}

/** The means of cells, with values on the edges too, so that a field is drawn up to its border. */
function withEdges({ columns, rows, values }: Cells): { width: number; height: number; values: number[] } {
  const row = (iy: number) =>
    ended(Array.from({ length: columns }, (_, ix) => values[iy * columns + ix] ?? 0));
  const inner = Array.from({ length: rows }, (_, iy) => row(iy));
  const width = columns + 2;
  const lines = Array.from({ length: width }, (_, ix) => ended(inner.map((line) => line[ix] ?? 0)));
  const height = rows + 2;
  return {
    width,
    height,
    values: Array.from({ length: width * height }, (_, i) => lines[i % width]?.[Math.floor(i / width)] ?? 0),
  };
}

/** Half a step beyond each end, straight on, but never out of the span that temperatures can have. */
function ended(line: readonly number[]): number[] {
  const beyond = (last = 0, before = last) => Math.min(1, Math.max(0, last + (last - before) / 2));
  return [beyond(line[0], line[1]), ...line, beyond(line.at(-1), line.at(-2))];
}

const onEdge = (a: Point, b: Point): boolean =>
  [0, 1].some((axis) => {
    const at = a[axis];
    return at === b[axis] && (at === 0 || at === 1);
  });

/** The parts of a ring that are lines of one temperature, without those along the edges. */
export function linesOf(ring: readonly Point[]): Point[][] {
  const points = ring.slice(0, -1);
  const cut = points.findIndex((point, i) => onEdge(point, points[(i + 1) % points.length] ?? point));
  if (cut < 0) return [[...ring]];
  const turned = [...points.slice(cut + 1), ...points.slice(0, cut + 1)];
  const lines: Point[][] = [];
  let line: Point[] = [];
  for (const [i, point] of turned.entries()) {
    const before = turned[i - 1];
    if (before && onEdge(before, point)) {
      if (line.length > 1) lines.push(line);
      line = [];
    }
    line.push(point);
  }
  if (line.length > 1) lines.push(line);
  return lines;
}
