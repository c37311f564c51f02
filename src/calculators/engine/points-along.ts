/** Points along a sweep: enough for a smooth curve, few enough for a slow phone. */
const enough = 41;

/** Halvings of the step in which a curve ends: to a four-thousandth of it. */
const halvings = 12;

/** Points in the last one or two steps. They crowd towards the end, where curves that end mostly are steepest. */
const last = 7;

/** A place, the value there, and whether it was added to lead on to where the values end. */
export type Point = readonly [x: number, y: number, leadsOn?: boolean];

/**
 * A function at even steps from one place to another, both of them in it. Where it has values in a part of the span only,
 * more points lead on to where the values end. A place without a value stays as one that is not finite.
 *
 * @example pointsAlong(Math.sqrt, -1, 1) // 41 points, and 7 from 0.1 down to 0
 */
export function pointsAlong(
  f: (x: number) => number,
  from: number,
  to: number,
  count: number = enough,
): Point[] {
  const step = (to - from) / (count - 1);
  const at = (x: number): Point => [x, f(x)];
  const even = Array.from({ length: count }, (_, i) => at(i === count - 1 ? to : from + step * i));
  const more = even.flatMap((b, i) => {
    const a = even[i - 1] ?? b;
    if (hasValue(a) === hasValue(b)) return [];
    const end = hasValue(a) ? endBetween(f, a, b) : endBetween(f, b, a);
    if (end === undefined) return [];
    const before = hasValue(a) ? Math.max(from, a[0] - step) : Math.min(to, b[0] + step);
    return Array.from({ length: last }, (_, k): Point => {
      const [x, y] = at(end + (before - end) * (1 - (k + 1) / last) ** 2);
      return [x, y, true];
    });
  });
  return [...even, ...more].sort(([a], [b]) => a - b);
}

/** A span goes beyond the part that has values by this much of it, so that it is seen to end there. */
const overhang = 0.15;

/**
 * The part of a swept span that is worth drawing: where some curve has values, with all places `kept`, and a little
 * beyond. The whole span where there are neither.
 *
 * @example partWithValues(pointsAlong(Math.sqrt, -10, 1), [], -10, 1) // [-0.15, 1]
 */
export function partWithValues(
  points: readonly Point[],
  kept: readonly number[],
  from: number,
  to: number,
): [from: number, to: number] {
  const xs = [...points.filter(hasValue).map(([x]) => x), ...kept];
  if (xs.length === 0) return [from, to];
  const [first, last] = [Math.min(...xs), Math.max(...xs)];
  const more = overhang * (last - first) || (to - from) / (enough - 1);
  return [Math.max(from, first - more), Math.min(to, last + more)];
}

const hasValue = ([, y]: Point): boolean => Number.isFinite(y);

/** The last place with a value between one that has and one that has not; nothing where that is the first of them. */
function endBetween(f: (x: number) => number, inside: Point, outside: Point): number | undefined {
  let [end, beyond] = [inside[0], outside[0]];
  for (let i = 0; i < halvings; i++) {
    const middle = (end + beyond) / 2;
    if (Number.isFinite(f(middle))) end = middle;
    else beyond = middle;
  }
  return end === inside[0] ? undefined : end;
}
