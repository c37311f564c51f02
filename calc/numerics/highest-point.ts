/** The part of an interval that a golden section cuts off. */
const CUT = (3 - Math.sqrt(5)) / 2;

/**
 * The x between `from` and `to` at which `f` is highest, for an `f` with one hill there, by parabolas and golden sections.
 *
 * x is found to about `tolerance`, and no closer than the square root of the last digit: a hill is flat on top, so that
 * the height is exact where the place is not.
 *
 * Source: Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5.
 *
 * @example highestPoint((x) => x * (1 - x), 0, 1, 1e-8) // 0.5
 */
export function highestPoint(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  let a = from;
  let b = to;
  // x is the best so far, w the next best, v the w before.
  let x = a + CUT * (b - a);
  let w = x;
  let v = x;
  let fx = f(x);
  let fw = fx;
  let fv = fx;
  let step = 0;
  let before = 0;
  for (;;) {
    const middle = (a + b) / 2;
    const smallest = Math.sqrt(Number.EPSILON) * Math.abs(x) + tolerance / 3;
    if (Math.abs(x - middle) + (b - a) / 2 <= 2 * smallest) return x;
    // The top of the parabola through the three is at x + p/q.
    const r = (x - w) * (fx - fv);
    const s = (x - v) * (fx - fw);
    const q = 2 * (s - r);
    const p = (x - w) * r - (x - v) * s;
    const top = p / q;
    if (Math.abs(top) < Math.abs(before) / 2 && x + top > a && x + top < b) {
      before = step;
      step = top;
      const u = x + step;
      if (u - a < 2 * smallest || b - u < 2 * smallest) step = x < middle ? smallest : -smallest;
    } else {
      before = x < middle ? b - x : a - x;
      step = CUT * before;
    }
    const u = x + (Math.abs(step) >= smallest ? step : Math.sign(step) * smallest);
    const fu = f(u);
    if (fu >= fx) {
      if (u < x) b = x;
      else a = x;
      v = w;
      fv = fw;
      w = x;
      fw = fx;
      x = u;
      fx = fu;
    } else {
      if (u < x) a = u;
      else b = u;
      if (fu >= fw || w === x) {
        v = w;
        fv = fw;
        w = u;
        fw = fu;
      } else if (fu >= fv || v === x || v === w) {
        v = u;
        fv = fu;
      }
    }
  }
}
