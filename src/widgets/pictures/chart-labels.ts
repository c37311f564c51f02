import { type Box, meet } from "./boxes.ts";
import type { Point } from "./path.ts";
import { textWidth, wrap } from "./text.ts";

/** The highest and lowest pixel of a curve between two columns; undefined where it is not drawn there. */
export type Outline = (from: number, to: number) => Point | undefined;

/** Columns are this many pixels wide. */
const column = 6;

export function outlineOf(runs: readonly (readonly Point[])[]): Outline {
  const highs: number[] = [];
  const lows: number[] = [];
  for (const run of runs) {
    run.forEach((b, i) => {
      const a = run[i - 1] ?? b;
      const slope = (b[1] - a[1]) / (b[0] - a[0] || 1);
      for (let k = Math.floor(a[0] / column); k <= b[0] / column; k++) {
        const ys = [k, k + 1].map(
          (c) => a[1] + slope * Math.max(0, Math.min(b[0] - a[0], c * column - a[0])),
        );
        highs[k] = Math.min(highs[k] ?? 1e9, ...ys);
        lows[k] = Math.max(lows[k] ?? 0, ...ys);
      }
    });
  }
  return (from, to) => {
    let [high, low] = [1e9, 0];
    for (let k = Math.max(0, Math.floor(from / column)); k <= to / column; k++) {
      high = Math.min(high, highs[k] ?? 1e9);
      low = Math.max(low, lows[k] ?? 0);
    }
    return high < 1e9 ? [high, low] : undefined;
  };
}

/** Left top corners, how much worse each is than the best, and whether lines end together, for a label so wide and high. */
export type Places = (
  w: number,
  h: number,
) => readonly (readonly [x: number, y: number, worse: number, endsTogether?: boolean])[];

/** Lines of text in a box that was kept free for them. */
export interface Label extends Box {
  readonly lines: readonly string[];
  readonly italic: boolean;
  /** At the right end of the box; else they begin together at its left. */
  readonly endsTogether: boolean;
}

/**
 * Places labels one after another, each where it does the least harm: clear of the curves, of the labels before it, and
 * of whatever `avoid` was told about, and as near to what it names as that allows.
 */
export function labeller(room: Box, font: number, outlines: readonly Outline[]) {
  const labels: Label[] = [];
  const marks: (Box & { readonly cost: number })[] = [];
  const avoid = (x: number, y: number, w: number, h: number, cost: number) =>
    marks.push({ x, y, w, h, cost });

  const harm = (place: Box) => {
    const { x, y, w, h } = place;
    const within = x >= room.x && y >= room.y && x + w <= room.x + room.w && y + h <= room.y + room.h;
    let sum = within ? 0 : 20;
    for (const mark of marks) if (meet(place, mark)) sum += mark.cost;
    for (const label of labels) sum += meet(place, label) ? 30 : meet(place, label, 10) ? 1 : 0;
    for (const outline of outlines) {
      const [high, low] = outline(x - 2, x + w + 2) ?? [1e9, 0];
      if (high < y + h + 2 && low > y - 2) sum += 5;
      else if (high < y + h + 7 && low > y - 7) sum += 0.5;
    }
    return sum;
  };

  /** Gives how bad the place is that it found. */
  const put = (text: string, width: number, places: Places, italic = false): number => {
    const lines = wrap(text, font, width);
    const w = Math.max(...lines.map((line) => textWidth(line, font)));
    const h = lines.length * (font + 3);
    let least = Number.POSITIVE_INFINITY;
    let best: Label | undefined;
    for (const [px, y, worse, endsTogether = false] of places(w, h)) {
      const x = Math.max(room.x, Math.min(room.x + room.w - w, px));
      const label = { x, y, w, h, lines, italic, endsTogether };
      const sum = worse + harm(label);
      if (sum < least) [least, best] = [sum, label];
    }
    if (!best) return 0;
    labels.push(best);
    return least;
  };

  /** Labels in the order given or the other way round: what comes first takes the room of what comes after. */
  const inBestOrder = (puts: readonly (() => number)[]) => {
    const before = labels.length;
    const [given, turned] = [puts, [...puts].reverse()].map((order) => {
      const sum = order.reduce((total, one) => total + one(), 0);
      return { sum, found: labels.splice(before) };
    });
    if (!given || !turned) return;
    labels.push(...(turned.sum < given.sum ? turned : given).found);
  };
  return { labels, avoid, put, inBestOrder };
}
