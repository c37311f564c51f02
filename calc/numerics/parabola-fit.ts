import type { Points } from "./straight-lines.ts";

/** y = constant + linear x + square x², and the root of the mean square of what it misses the points by. */
export interface Parabola {
  readonly constant: number;
  readonly linear: number;
  readonly square: number;
  readonly rms: number;
}

/**
 * The parabola of least squares through three or more points, exact through three. Solved by orthogonal polynomials, so that
 * points close together do no harm. Throws a RangeError where fewer than three have an x of their own.
 *
 * @example parabolaFit([[0, 30], [10, 29], [20, 26]]).square // -0.01
 */
export function parabolaFit(points: Points): Parabola {
  if (new Set(points.map(([x]) => x)).size < 3) throw new RangeError("a parabola needs three points");
  const count = points.length;
  const mean = points.reduce((sum, [x]) => sum + x, 0) / count;
  const scale = Math.max(...points.map(([x]) => Math.abs(x - mean)));
  const at = points.map(([x, y]) => ({ u: (x - mean) / scale, y }));
  const sum = (f: (point: { u: number; y: number }) => number) => at.reduce((all, one) => all + f(one), 0);

  const u2 = sum(({ u }) => u * u);
  const skew = sum(({ u }) => u ** 3) / u2;
  const level = u2 / count;
  const second = (u: number) => u * u - skew * u - level;
  const c_0 = sum(({ y }) => y) / count;
  const c_1 = sum(({ u, y }) => u * y) / u2;
  const c_2 = sum(({ u, y }) => second(u) * y) / sum(({ u }) => second(u) ** 2);
  const rms = Math.sqrt(sum(({ u, y }) => (y - c_0 - c_1 * u - c_2 * second(u)) ** 2) / count);

  const square = c_2 / scale ** 2;
  const linear = (c_1 - c_2 * skew) / scale - 2 * square * mean;
  const constant = c_0 - c_2 * level - ((c_1 - c_2 * skew) / scale) * mean + square * mean ** 2;
  return { constant, linear, square, rms };
}
