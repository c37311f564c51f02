import { axisName } from "./chart-sentence.ts";
import { drawable, niceMarks, r1 } from "./numbers.ts";
import { clip, type Point, polyline, thin } from "./path.ts";
import { textWidth, wrap } from "./text.ts";
import type { Axis } from "./types.ts";

/** Many curves of one kind that one number tells apart. In the units of the axes. */
export interface FamilyProps {
  readonly title: string;
  readonly x: Axis & { readonly from: number; readonly to: number };
  readonly y: Axis & { readonly from: number; readonly to: number };
  /** The symbol of the number that tells the curves apart; it heads their labels. Left out where the labels say it all. */
  readonly by?: string;
  readonly curves: readonly Member[];
}

export interface Member {
  /** Stands at the right end of the curve: "0.25". */
  readonly label: string;
  /** Solid where left out. Curves that run close together take turns. */
  readonly dash?: "solid" | "alternative" | "ideal";
  /** In order of x. A point that is not finite leaves a gap. */
  readonly points: readonly Point[];
  /** The highest point, where the curve turns there: a cross marks it. */
  readonly best?: Point | undefined;
}

export interface Size {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  /** About how many parts the axes are cut into. */
  readonly across: number;
  readonly up: number;
}

export const wideSize: Size = { width: 800, height: 468, font: 15, across: 8, up: 5 };
export const narrowSize: Size = { width: 350, height: 400, font: 14, across: 4, up: 5 };

export function layoutFamily({ x, y, by, curves }: FamilyProps, { width, height, font, across, up }: Size) {
  const line = font + 3;
  /** From the end of a curve to its label. */
  const reach = 22;
  const xTitle = wrap(axisName(x), font, width);
  const yTitle = wrap(axisName(y), font, width - 60);
  const xMarks = niceMarks(x.from, x.to, across);
  const yMarks = niceMarks(y.from, y.to, up);
  const widest = (texts: readonly string[]) => Math.max(0, ...texts.map((text) => textWidth(text, font)));

  const left = widest(yMarks.map(({ text }) => text)) + 14;
  const right = width - reach - widest(curves.map(({ label }) => label)) - 6;
  const top = 22 + line * yTitle.length;
  const bottom = height - 34 - line * xTitle.length;
  const frame = { x: left, y: top, w: right - left, h: bottom - top };
  const at = ([px, py]: Point): Point => [
    left + (frame.w * (px - x.from)) / (x.to - x.from),
    bottom - (frame.h * (py - y.from)) / (y.to - y.from),
  ];

  const drawn = curves.map(({ label, dash = "solid", points, best }) => {
    const runs = clip(
      points.map((point) => (point.every(drawable) ? at(point) : undefined)),
      frame,
    );
    const end = runs.at(-1)?.at(-1) ?? [right, bottom];
    return {
      label,
      dash,
      end,
      d: runs.map((run) => polyline(thin(run, 0.2))).join(""),
      cross: best && at(best),
    };
  });
  const inOrder = [...drawn].sort((a, b) => a.end[1] - b.end[1]);
  const heights = spread(
    inOrder.map(({ end }) => end[1]),
    line - 1,
    [top, bottom],
  );
  const labels = inOrder.map(({ label, end }, i) => {
    const y = heights[i] ?? bottom;
    const leader = `M${r1(end[0] + 3)} ${r1(end[1])}h3L${r1(right + reach - 7)} ${r1(y)}h3`;
    return { text: label, x: right + reach, y: y + font / 3, leader };
  });
  return {
    frame,
    line,
    xTitle,
    yTitle,
    heading: by !== undefined && { text: by, x: right + reach, y: 16 + line * (yTitle.length - 1) },
    xTicks: xMarks.map(({ text, value }) => ({ text, at: at([value, y.from])[0], y: bottom + font + 7 })),
    yTicks: yMarks.map(({ text, value }) => ({ text, at: at([x.from, value])[1], x: left - 9 })),
    curves: drawn,
    labels,
  };
}

/**
 * Moves heights apart until neighbours are `gap` from one another, each as near to where it was as that and the span
 * allow. They come in order, and stay in it.
 */
export function spread(
  heights: readonly number[],
  gap: number,
  [from, to]: readonly [number, number],
): number[] {
  // Without the gaps the answer is the nearest rising line: neighbours that would fall share their mean.
  const blocks: { sum: number; count: number }[] = [];
  heights.forEach((height, i) => {
    let block = { sum: height - i * gap, count: 1 };
    for (
      let above = blocks.at(-1);
      above && above.sum / above.count > block.sum / block.count;
      above = blocks.at(-1)
    ) {
      block = { sum: above.sum + block.sum, count: above.count + block.count };
      blocks.pop();
    }
    blocks.push(block);
  });
  const last = to - gap * (heights.length - 1);
  return blocks
    .flatMap(({ sum, count }) => Array<number>(count).fill(Math.max(from, Math.min(last, sum / count))))
    .map((height, i) => height + i * gap);
}
