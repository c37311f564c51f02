import { drawable, spanOf } from "./numbers.ts";
import type { ChartProps, CurvePoint } from "./types.ts";

export type Span = readonly [from: number, to: number];

/** What the x axis spans. */
export const acrossOf = ({ x, state }: ChartProps): Span => spanOf([x.from, x.to, state?.x].filter(drawable));

/** The bands of which some part lies in the span, with that part. */
export const bandsIn = ({ bands = [] }: ChartProps, [low, high]: Span) =>
  bands.flatMap((band) => {
    const shown: Span = [Math.max(low, band.from), Math.min(high, band.to)];
    return shown[0] < shown[1] ? [{ ...band, shown }] : [];
  });

/**
 * The bounds on whose wrong side some part of the span lies, with that part; and where the bound itself stands, unless
 * that is beyond the span and all of it is wrong.
 */
export const boundsIn = ({ bounds = [] }: ChartProps, [low, high]: Span) =>
  bounds.flatMap((bound) => {
    const { x, wrong } = bound;
    if (!drawable(x)) return [];
    const shown: Span = wrong === "above" ? [Math.max(low, x), high] : [low, Math.min(high, x)];
    return shown[0] < shown[1] ? [{ ...bound, shown, at: x >= low && x <= high ? x : undefined }] : [];
  });

/** The parts of the span that are wrong, each once. */
export function wrongIn(bounds: ReturnType<typeof boundsIn>): readonly Span[] {
  const spans: Span[] = [];
  for (const { shown } of [...bounds].sort((a, b) => a.shown[0] - b.shown[0])) {
    const last = spans.at(-1);
    if (last && shown[0] <= last[1]) spans[spans.length - 1] = [last[0], Math.max(last[1], shown[1])];
    else spans.push(shown);
  }
  return spans;
}

/**
 * The points of a curve that have to be seen. Where it runs away towards its end, those that lead on to that are left to
 * the edge of the frame: they would flatten all the rest.
 */
export function worthSeeing(points: readonly CurvePoint[]): readonly CurvePoint[] {
  const known = points.filter(([x, y]) => drawable(x) && drawable(y));
  const steady = known.flatMap(([, y, leadsOn]) => (leadsOn ? [] : [y]));
  const [low, high] = [Math.min(...steady), Math.max(...steady)];
  // Of one point, or of points at one height, all that leads on is worth seeing.
  const reach = high > low ? (high - low) / 2 : Number.POSITIVE_INFINITY;
  return known.filter(([, y]) => y >= low - reach && y <= high + reach);
}
