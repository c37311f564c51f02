/** `tolerance` is on the largest relative step of a parameter that ends the search. */
export interface LeastSquaresOptions {
  readonly tolerance: number;
  readonly limit?: number;
}

/** A step of this part of a parameter shows how the residuals answer to it. */
const STEP = 1e-6;
const FIRST_DAMPING = 1e-3;
/** With more than this, no step makes the sum of squares smaller. */
const MOST_DAMPING = 1e12;

const sumOfSquares = (residuals: readonly number[]): number => residuals.reduce((sum, r) => sum + r * r, 0);

/**
 * Parameters, none of them zero, at which the sum of the squares of the residuals is least, near where the search starts: the
 * method of Levenberg and Marquardt, with the slopes taken from differences.
 *
 * There have to be as many residuals as parameters or more. Ends where a step moves no parameter by more than `tolerance`, or
 * where nothing gets better; throws an Error after `limit` steps (200 unless given).
 *
 * Source: Marquardt, An Algorithm for Least-Squares Estimation of Nonlinear Parameters, 1963.
 *
 * @example leastSquares(([a = 1]) => [a - 2, a - 4], [1], { tolerance: 1e-9 })[0] // 3.000
 */
export function leastSquares(
  residualsOf: (parameters: readonly number[]) => readonly number[],
  start: readonly number[],
  { tolerance, limit = 200 }: LeastSquaresOptions,
): readonly number[] {
  let at = start;
  let residuals = residualsOf(at);
  let damping = FIRST_DAMPING;
  for (let i = 0; i < limit; i++) {
    const slopes = at.map((_, k) => slopesOf(residualsOf, at, k));
    const curvature = slopes.map((a) => slopes.map((b) => product(a, b)));
    const downhill = slopes.map((a) => -product(a, residuals));
    for (;;) {
      const damped = curvature.map((row, k) =>
        row.map((value, l) => (k === l ? value * (1 + damping) : value)),
      );
      const step = solveLinear(damped, downhill);
      const next = at.map((value, k) => value + (step[k] ?? Number.NaN));
      const theirs = next.every(Number.isFinite) ? residualsOf(next) : [Number.NaN];
      const isBetter = sumOfSquares(theirs) <= sumOfSquares(residuals);
      const moved = Math.max(...at.map((value, k) => Math.abs((step[k] ?? 0) / value)));
      if (isBetter) {
        at = next;
        residuals = theirs;
        damping /= 10;
      } else damping *= 10;
      if (moved < tolerance || damping > MOST_DAMPING) return at;
      if (isBetter) break;
    }
  }
  throw new Error(`no least squares within ${limit} steps`);
}

function slopesOf(
  residualsOf: (parameters: readonly number[]) => readonly number[],
  at: readonly number[],
  k: number,
): readonly number[] {
  const h = STEP * Math.abs(at[k] ?? 1);
  const moved = (by: number) => residualsOf(at.map((value, l) => (l === k ? value + by : value)));
  const [up, down] = [moved(h), moved(-h)];
  return up.map((value, i) => (value - (down[i] ?? Number.NaN)) / (2 * h));
}

const product = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] ?? 0), 0);

/** The solution of a few linear equations, by elimination; not finite where they have none. */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] {
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  const n = rows.length;
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++)
      if (Math.abs(rows[i]?.[k] ?? 0) > Math.abs(rows[pivot]?.[k] ?? 0)) pivot = i;
    const top = rows[pivot] as number[];
    rows[pivot] = rows[k] as number[];
    rows[k] = top;
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const row = rows[i] as number[];
      const part = (row[k] ?? 0) / (top[k] ?? 0);
      for (let l = k; l <= n; l++) row[l] = (row[l] ?? 0) - part * (top[l] ?? 0);
    }
  }
  return rows.map((row, i) => (row[n] ?? 0) / (row[i] ?? 0));
}
