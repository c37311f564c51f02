/** Points in rising order of x. */
export type Points = readonly (readonly [x: number, y: number])[];

/**
 * The height at x on the straight lines between points. Throws a RangeError outside them.
 *
 * @example onStraightLines([[0, 2], [1, 4], [3, 5]], 2) // 4.5
 */
export function onStraightLines(points: Points, x: number): number {
  const right = points.findIndex(([at]) => at >= x);
  const b = points[right];
  if (!b) throw new RangeError(`${x} is not on the table`);
  const a = points[right - 1];
  if (b[0] === x) return b[1];
  if (!a) throw new RangeError(`${x} is not on the table`);
  return a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0]);
}
