/** `tolerance` is on each entry of f(u) - u; `limit` is the largest number of directions that are searched. */
export interface FixedPointOptions {
  readonly tolerance: number;
  readonly limit?: number;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

/** Adds `factor` times `b` to `a`. */
function add(a: Float64Array, factor: number, b: Float64Array): void {
  for (let i = 0; i < a.length; i++) a[i] = (a[i] as number) + factor * (b[i] as number);
}

function largest(a: Float64Array): number {
  let most = 0;
  for (const x of a) most = Math.max(most, Math.abs(x));
  return most;
}

interface Direction {
  readonly step: Float64Array;
  /** What the step takes off the residual. */
  readonly effect: Float64Array;
  readonly square: number;
}

/**
 * The u of `size` numbers with u = f(u), for an f that is linear but for a constant: `f(u, to)` writes f(u) into `to` and
 * leaves u alone.
 *
 * Generalised conjugate residuals from u = 0: exact after at most `size` directions, and close after a few where f draws
 * most of what it is given together. Throws an Error when `limit` directions (100 unless given) were not enough, as where
 * there is no such u.
 *
 * Source: Eisenstat, Elman, Schultz, SIAM Journal on Numerical Analysis 20 (1983) 345, from memory.
 *
 * @example linearFixedPoint((u, to) => to.set([0.5 * u[0] + 1]), 1, { tolerance: 1e-12 })[0] // 2
 */
export function linearFixedPoint(
  f: (u: Float64Array, to: Float64Array) => void,
  size: number,
  { tolerance, limit = 100 }: FixedPointOptions,
): Float64Array {
  const u = new Float64Array(size);
  if (size === 0) return u;
  const constant = new Float64Array(size);
  f(u, constant);
  const residual = constant.slice();
  const directions: Direction[] = [];
  for (;;) {
    const off = largest(residual);
    if (off <= tolerance) return u;
    if (directions.length === limit || !Number.isFinite(off))
      throw new Error(`no fixed point within ${limit} directions`);
    // Of the size of one, so that the difference to the constant keeps its figures.
    const step = residual.map((x) => x / off);
    const effect = new Float64Array(step.length);
    f(step, effect);
    for (let i = 0; i < effect.length; i++)
      effect[i] = (step[i] as number) - ((effect[i] as number) - (constant[i] as number));
    for (const before of directions) {
      const share = dot(effect, before.effect) / before.square;
      add(step, -share, before.step);
      add(effect, -share, before.effect);
    }
    const square = dot(effect, effect);
    const length = dot(residual, effect) / square;
    add(u, length, step);
    add(residual, -length, effect);
    directions.push({ step, effect, square });
  }
}
