/** Points along a sweep: enough for a smooth curve, few enough for a slow phone. */
const count = 41;

/** Halvings of the step in which a curve ends: to a four-thousandth of it. */
const halvings = 12;

/** Points in the last one or two steps. They crowd towards the end, where curves that end mostly are steepest. */
const last = 7;

/** A place, the value there, and whether it was added to lead on to where the values end. */
type Point = readonly [x: number, y: number, leadsOn?: boolean];

/**
 * A function at even steps from one place to another, both of them in it. Where it has values in a part of the span only,
 * more points lead on to where the values end. A place without a value stays as one that is not finite.
 *
 * @example sweep(Math.sqrt, -1, 1) // 41 points, and 7 from 0.1 down to 0
 */
export function sweep(f: (x: number) => number, from: number, to: number): Point[] {
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
