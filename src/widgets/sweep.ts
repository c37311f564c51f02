/** Points along a sweep: enough for a smooth curve, few enough for a slow phone. */
const count = 41;

/** Halvings of the step in which a curve ends: to a four-thousandth of it. */
const halvings = 12;

/** Points in that step. They crowd towards the end, where curves that end mostly are steepest. */
const last = 4;

type Point = readonly [x: number, y: number];

/**
 * A function at even steps from one place to another, both of them in it. Where it has values in a part of the span only,
 * points lead on from the last step with a value to where the values end. A place without a value stays as one that is
 * not finite.
 *
 * @example sweep(Math.sqrt, -1, 1) // 41 points, and 4 from 0.05 down to 0
 */
export function sweep(f: (x: number) => number, from: number, to: number): Point[] {
  const at = (x: number): Point => [x, f(x)];
  const even = Array.from({ length: count }, (_, i) => at(from + ((to - from) * i) / (count - 1)));
  return even.flatMap((b, i): readonly Point[] => {
    const a = even[i - 1] ?? b;
    if (hasValue(a) === hasValue(b)) return [b];
    return hasValue(a) ? [...towardsEnd(f, a, b), b] : [...towardsEnd(f, b, a).reverse(), b];
  });
}

const hasValue = ([, y]: Point): boolean => Number.isFinite(y);

/** Points between one that has a value and one that has none, up to the last that has one. */
function towardsEnd(f: (x: number) => number, inside: Point, outside: Point): Point[] {
  let [end, beyond] = [inside[0], outside[0]];
  for (let i = 0; i < halvings; i++) {
    const middle = (end + beyond) / 2;
    if (Number.isFinite(f(middle))) end = middle;
    else beyond = middle;
  }
  if (end === inside[0]) return [];
  return Array.from({ length: last }, (_, i): Point => {
    const x = end + (inside[0] - end) * (1 - (i + 1) / last) ** 2;
    return [x, f(x)];
  });
}
