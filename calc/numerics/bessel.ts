/** Beyond this the series for large arguments, which ends by growing again, is exact to the last digits. */
const LARGE = 20;
/** A term that is smaller than the sum by this factor adds nothing that a number can show. */
const SMALL = 1e-17;

/**
 * e^-x I0(x), for x from 0 on, with the modified Bessel function of order zero; to about 1e-15 of itself.
 *
 * Without the exponential, I0 runs out of the range of numbers at 713. Both series are classic: the one in powers of x, all
 * of whose terms are positive, and the asymptotic one.
 *
 * @example scaledBesselI0(2) // 0.3085
 */
export function scaledBesselI0(x: number): number {
  let term = 1;
  let sum = 1;
  if (x < LARGE) {
    const square = (x * x) / 4;
    for (let k = 1; term > SMALL * sum; k++) {
      term *= square / (k * k);
      sum += term;
    }
    return Math.exp(-x) * sum;
  }
  for (let k = 1; term > SMALL; k++) {
    const odd = 2 * k - 1;
    term *= (odd * odd) / (8 * k * x);
    sum += term;
  }
  return sum / Math.sqrt(2 * Math.PI * x);
}
