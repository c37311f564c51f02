import { type Box, meet } from "./boxes.ts";
import type { Point } from "./path.ts";
import { textWidth } from "./text.ts";

/** Lines of one temperature, of which one is to be labelled. */
export interface Isoline {
  readonly text: string;
  readonly parts: readonly {
    /** The label of a line in here stays in here. */
    readonly room: Box;
    readonly lines: readonly (readonly Point[])[];
  }[];
}

export interface IsolineLabel extends Box {
  readonly text: string;
}

/** Points along a line, evenly apart, with how far each is from the line's middle: 0 to 1. */
function spots(line: readonly Point[]): { at: Point; off: number }[] {
  const lengths = line.map(([x, y], i) => {
    const [px, py] = line[i - 1] ?? [x, y];
    return Math.hypot(x - px, y - py);
  });
  const whole = lengths.reduce((sum, one) => sum + one, 0);
  const count = Math.max(3, Math.min(25, Math.round(whole / 8)));
  return Array.from({ length: count }, (_, k) => {
    let rest = (whole * (k + 0.5)) / count;
    const i = lengths.findIndex((length, at) => {
      if (at > 0 && rest <= length) return true;
      rest -= length;
      return false;
    });
    const [a, b] = [line[i - 1], line[i]];
    const share = rest / (lengths[i] || 1);
    const at: Point =
      a && b ? [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share] : (line[0] ?? [0, 0]);
    return { at, off: Math.abs((2 * (k + 0.5)) / count - 1) };
  });
}

/** Labels on their lines, as far from one another as there is room; a line that has no room goes without. */
export function isolineLabels(
  isolines: readonly Isoline[],
  font: number,
  taken: readonly Box[],
): IsolineLabel[] {
  const labels: IsolineLabel[] = [];
  for (const { text, parts } of isolines) {
    const [w, h] = [textWidth(text, font), font + 1];
    const places = parts.flatMap(({ room, lines }) =>
      lines.flatMap((line) =>
        spots(line).map(({ at: [x, y], off }) => ({ room, x: x - w / 2, y: y - h / 2, w, h, off })),
      ),
    );
    const free = places.filter(
      (place) =>
        place.x >= place.room.x + 2 &&
        place.y >= place.room.y + 2 &&
        place.x + place.w <= place.room.x + place.room.w - 2 &&
        place.y + place.h <= place.room.y + place.room.h - 2 &&
        ![...taken, ...labels].some((other) => meet(place, other, 3)),
    );
    const worth = (place: (typeof free)[number]) => {
      const near = labels.map(({ x, y }) => Math.hypot(x - place.x, y - place.y));
      return Math.min(70, ...near) - 25 * place.off;
    };
    const [best] = free.sort((a, b) => worth(b) - worth(a));
    if (best) labels.push({ text, x: best.x, y: best.y, w: best.w, h: best.h });
  }
  return labels;
}
