import type { Points } from "./straight-lines.ts";

/**
 * A smooth curve through points in rising order of x that rises and falls only where they do: cubic between each two, with
 * the slopes of Fritsch and Carlson in the weighted form of Brodlie.
 *
 * Throws a RangeError for fewer than two points, for x that do not rise, and outside the points.
 *
 * Source: Fritsch and Carlson, SIAM Journal on Numerical Analysis 17 (1980) 238, from memory.
 *
 * @example monotoneCurve([[0, 0], [1, 1], [2, 4]])(1.5) // 2.1875
 */
export function monotoneCurve(points: Points): (x: number) => number {
  if (points.length < 2) throw new RangeError("a curve needs two points");
  const steps = points.slice(1).map(([x, y], i) => {
    const [before, height] = points[i] as Points[number];
    if (!(x > before)) throw new RangeError("the points of a curve rise in x");
    return { width: x - before, slope: (y - height) / (x - before) };
  });
  const slopes = points.map((_, i) => slopeAt(steps, i));
  return (x) => {
    const right = points.findIndex(([at]) => at >= x);
    const b = points[right];
    if (!b) throw new RangeError(`${x} is not on the curve`);
    if (b[0] === x) return b[1];
    const a = points[right - 1];
    const step = steps[right - 1];
    if (!a || !step) throw new RangeError(`${x} is not on the curve`);
    const t = (x - a[0]) / step.width;
    const [m_a, m_b] = [slopes[right - 1] as number, slopes[right] as number];
    const bend = (m_a + m_b - 2 * step.slope) * t - (2 * m_a + m_b - 3 * step.slope);
    return a[1] + step.width * t * (m_a + t * bend);
  };
}

interface Step {
  readonly width: number;
  readonly slope: number;
}

function slopeAt(steps: readonly Step[], i: number): number {
  const before = steps[i - 1];
  const after = steps[i];
  if (before && after) {
    if (before.slope * after.slope <= 0) return 0;
    const one = 2 * after.width + before.width;
    const two = after.width + 2 * before.width;
    return (one + two) / (one / before.slope + two / after.slope);
  }
  const end = (before ?? after) as Step;
  const next = before ? steps[i - 2] : steps[i + 1];
  if (!next) return end.slope;
  // The parabola through three points, held back where it would turn.
  const slope =
    ((2 * end.width + next.width) * end.slope - end.width * next.slope) / (end.width + next.width);
  if (slope * end.slope <= 0) return 0;
  if (end.slope * next.slope <= 0 && Math.abs(slope) > 3 * Math.abs(end.slope)) return 3 * end.slope;
  return slope;
}
