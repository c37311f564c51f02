import { type Box, meet } from "./boxes.ts";
import { labeller, outlineOf } from "./chart-labels.ts";
import { besideCurve, besideMark } from "./chart-places.ts";
import { axisName } from "./chart-sentence.ts";
import { layoutSpans, nameSpans } from "./chart-span-marks.ts";
import { acrossOf, worthSeeing } from "./chart-spans.ts";
import { drawable, type Mark, niceMarks, niceStep, spanOf } from "./numbers.ts";
import { clip, type Point, polyline } from "./path.ts";
import { textWidth, wrap } from "./text.ts";
import type { ChartProps, CurvePoint } from "./types.ts";

export interface Size {
  readonly width: number;
  readonly height: number;
  readonly font: number;
  /** About how many parts the axes are cut into. */
  readonly across: number;
  readonly up: number;
}

export const wideSize: Size = { width: 800, height: 372, font: 15, across: 7, up: 5 };
export const narrowSize: Size = { width: 350, height: 310, font: 14, across: 4, up: 5 };

export function layoutChart(props: ChartProps, { width, height, font, across, up }: Size) {
  const { x, y, state, best } = props;
  const line = font + 3;
  const xSpan = acrossOf(props);
  const ySpan = heightSpan(props, xSpan, up);
  const xMarks = niceMarks(...xSpan, across);
  const yMarks = niceMarks(...ySpan, up);
  const xTitle = wrap(axisName(x), font, width);
  const yTitle = wrap(axisName(y), font, width);

  const flagWidth = (text = "") => textWidth(text, font, true) + 16;
  const left = Math.max(
    54,
    flagWidth(state?.yText) + 4,
    ...yMarks.map(({ text }) => textWidth(text, font) + 14),
  );
  const top = 22 + line * yTitle.length;
  const bottom = height - 34 - line * xTitle.length;
  const frame: Box = { x: left, y: top, w: width - left - 4, h: bottom - top };
  const atX = (x: number) => left + (frame.w * (x - xSpan[0])) / (xSpan[1] - xSpan[0]);
  const atY = (y: number) => bottom - (frame.h * (y - ySpan[0])) / (ySpan[1] - ySpan[0]);
  const at = ([x, y]: CurvePoint): Point | undefined =>
    drawable(x) && drawable(y) ? [atX(x), atY(y)] : undefined;

  const ring = state && at([state.x, state.y]);
  const cross = best && at([best.x, best.y]);
  const spans = layoutSpans(props, xSpan, frame, atX);
  const curves = props.curves.map(({ label, dash = "solid", points }) => {
    const runs = clip(points.map(at), frame);
    return { label, dash, runs, d: runs.map(polyline).join(""), outline: outlineOf(runs) };
  });

  const flags: (Box & { text: string })[] = [];
  if (state && ring) {
    const [w, h] = [flagWidth(state.xText), 23];
    const x = Math.max(2, Math.min(width - w, ring[0] - w / 2));
    flags.push({ text: state.xText, x, y: bottom + 5, w, h });
    const yw = flagWidth(state.yText);
    // In the corner it gives way to the one under the axis.
    const lowest = x < left ? bottom + 2 - h : ring[1];
    flags.push({ text: state.yText, x: left - 2 - yw, y: Math.min(ring[1] - h / 2, lowest), w: yw, h });
  }

  const ticks = (
    marks: readonly Mark[],
    place: (mark: Mark, w: number) => readonly [at: number, x: number, y: number],
  ) =>
    marks.map((mark) => {
      const w = textWidth(mark.text, font);
      const [at, x, y] = place(mark, w);
      return {
        text: mark.text,
        at,
        x,
        y,
        w,
        shown: !flags.some((flag) => meet(flag, { x, y, w, h: line }, 3)),
      };
    });
  const xTicks = ticks(xMarks, ({ value }, w) => {
    const x = atX(value);
    return [x, Math.min(width - w, x - w / 2), bottom + 8];
  });
  const yTicks = ticks(yMarks, ({ value }, w) => [atY(value), left - 9 - w, atY(value) - line / 2]);
  const pitch = (xTicks[1]?.at ?? width) - (xTicks[0]?.at ?? 0);
  const every = Math.ceil((Math.max(0, ...xTicks.map(({ w }) => w)) + 8) / pitch);

  const room = { x: left + 6, y: top + 2, w: frame.w - 8, h: frame.h - 4 };
  const { labels, avoid, put, inBestOrder } = labeller(
    room,
    font,
    curves.map(({ outline }) => outline),
  );
  if (ring) {
    avoid(ring[0] - 9, ring[1] - 9, 18, 18, 8);
    avoid(left, ring[1] - 1, ring[0] - left, 2, 2);
    avoid(ring[0] - 1, ring[1], 2, bottom - ring[1], 2);
  }
  if (cross) avoid(cross[0] - 7, cross[1] - 7, 14, 14, 8);
  const spanNames = nameSpans(spans, room, font, { avoid, put });
  const names = curves.flatMap((curve) =>
    curve.label
      ? [
          () =>
            put(curve.label, 0.62 * frame.w, besideCurve(curve, curves, room, line), curve.dash === "ideal"),
        ]
      : [],
  );
  if (best && cross) names.unshift(() => put(best.label, 0.6 * frame.w, besideMark(cross)));
  inBestOrder([...spanNames, ...names]);

  return {
    frame,
    line,
    xTitle,
    yTitle,
    xTicks: xTicks.map((tick, i) => ({ ...tick, shown: tick.shown && i % every === 0 })),
    yTicks,
    curves,
    spans,
    ring,
    cross,
    flags,
    labels,
  };
}

/** The span of the y axis: what the caller asks, else all that has to be seen, out to the next ticks. */
function heightSpan({ y, curves, state, best }: ChartProps, xSpan: Point, up: number) {
  const seen = curves.flatMap(({ points }) =>
    worthSeeing(points.filter(([x]) => x >= xSpan[0] && x <= xSpan[1])).map(([, y]) => y),
  );
  const [low, high] = spanOf([...seen, state?.y, best?.y].filter(drawable));
  const step = niceStep(high - low, up);
  const from = y.from ?? Math.floor(low / step + 1e-6) * step;
  const to = y.to ?? Math.ceil(high / step - 1e-6) * step;
  return spanOf([from, to, state?.y].filter(drawable));
}
