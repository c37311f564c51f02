/** `tolerance` is on x, in the unit of x; `limit` is the largest number of evaluations. */
export interface RootOptions {
  readonly tolerance: number;
  readonly limit?: number;
}

/**
 * The x between `from` and `to` at which `f` is zero, by Brent's method.
 *
 * The bracket must hold a change of sign; the result is within `tolerance` of one. A jump through zero counts as a zero.
 * Throws a RangeError when there is no change of sign or a value is not finite, and an Error when `limit` evaluations
 * (100 unless given) were not enough. It never loops on.
 *
 * Source: Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4.
 *
 * @example bracketedRoot((x) => x * x - 2, 0, 2, { tolerance: 1e-12 }) // 1.41421356…
 */
export function bracketedRoot(
  f: (x: number) => number,
  from: number,
  to: number,
  options: RootOptions,
): number {
  const { tolerance, limit = 100 } = options;
  let a = from;
  let b = to;
  let fa = f(a);
  let fb = f(b);
  if (!Number.isFinite(fa) || !Number.isFinite(fb)) throw new RangeError("a bracket end has no finite value");
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) throw new RangeError("the bracket holds no change of sign");

  // b is the best estimate, c keeps the change of sign between itself and b.
  let c = a;
  let fc = fa;
  let step = b - a;
  let before = step;
  for (let count = 2; count < limit; count++) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      before = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const smallest = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= smallest || fb === 0) return b;

    if (Math.abs(before) < smallest || Math.abs(fa) <= Math.abs(fb)) {
      step = half;
      before = half;
    } else {
      const s = fb / fa;
      let p: number;
      let q: number;
      if (a === c) {
        p = 2 * half * s;
        q = 1 - s;
      } else {
        const t = fa / fc;
        const u = fb / fc;
        p = s * (2 * half * t * (t - u) - (b - a) * (u - 1));
        q = (t - 1) * (u - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      if (2 * p < Math.min(3 * half * q - Math.abs(smallest * q), Math.abs(before * q))) {
        before = step;
        step = p / q;
      } else {
        step = half;
        before = half;
      }
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > smallest ? step : Math.sign(half) * smallest;
    fb = f(b);
    if (!Number.isFinite(fb)) throw new RangeError("the function has no finite value inside the bracket");
  }
  throw new Error(`no root within ${limit} evaluations`);
}
