import { bracketedRoot } from "./bracketed-root.ts";
import { highestPoint } from "./highest-point.ts";

/** A span of x, both ends belonging to it. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Equally spaced points from one end of a span to the other. */
const pointsIn = ({ from, to }: Span, parts: number): readonly number[] =>
  Array.from({ length: parts + 1 }, (_, i) => (i === parts ? to : from + ((to - from) * i) / parts));

/**
 * The parts of a span in which `excess` is not above zero, with their ends to about `tolerance`. A part narrower than a
 * `parts`-th of the span, between two points that are looked at, is not seen.
 *
 * @example spansWithin((x) => 1 - x * x, { from: -2, to: 3 }, { parts: 10, tolerance: 1e-9 })[1].from // 1.000
 */
export function spansWithin(
  excess: (x: number) => number,
  span: Span,
  { parts, tolerance }: { readonly parts: number; readonly tolerance: number },
): readonly Span[] {
  const points = pointsIn(span, parts);
  const values = points.map(excess);
  const spans: Span[] = [];
  let from: number | undefined;
  for (const [i, x] of points.entries()) {
    const isIn = (values[i] as number) <= 0;
    if (isIn === (from !== undefined)) continue;
    // Of the last two numbers beside the edge the one inside is kept, so that an end of a span never exceeds.
    const before = points[i - 1];
    const edge =
      before === undefined
        ? x
        : inside(excess, bracketedRoot(excess, before, x, { tolerance }), isIn ? x : before);
    if (isIn) from = edge;
    else {
      spans.push({ from: from as number, to: edge });
      from = undefined;
    }
  }
  if (from !== undefined) spans.push({ from, to: span.to });
  return spans;
}

/** `edge`, moved towards a point that is inside until it is inside itself. */
function inside(excess: (x: number) => number, edge: number, safe: number): number {
  let step = 1e-15;
  for (let x = edge; step < 1; x = edge + (safe - edge) * step) {
    if (excess(x) <= 0) return x;
    step *= 4;
  }
  return safe;
}

/**
 * The x in a span at which `f` is lowest: the lowest of `parts` + 1 equally spaced points, and then of what lies between
 * its neighbours, to about `tolerance`. `f` may have several valleys, as long as none is narrower than two parts.
 *
 * @example lowestIn((x) => (x - 1) ** 2, { from: 0, to: 3 }, { parts: 50, tolerance: 1e-9 }) // 1
 */
export function lowestIn(
  f: (x: number) => number,
  span: Span,
  { parts, tolerance }: { readonly parts: number; readonly tolerance: number },
): number {
  const points = pointsIn(span, parts);
  const values = points.map(f);
  const i = values.indexOf(Math.min(...values));
  const [x, before, after] = [points[i] as number, points[i - 1] ?? span.from, points[i + 1] ?? span.to];
  if (before === after) return x;
  const found = highestPoint((at) => -f(at), before, after, tolerance);
  return f(found) < (values[i] as number) ? found : x;
}
