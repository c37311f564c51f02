/** Where rate times length is less, the decay is lost in the last digit. */
const NONE = 1e-17;

/**
 * The area under e^(-rate s) for s from 0 to `length`: (1 - e^(-rate length))/rate, and `length` where the rate is 0.
 *
 * Exact to the last digits for every rate, zero and negative ones included. `length` may be Infinity where the rate is not
 * negative.
 *
 * @example decayArea(2, 0.5) // 0.3161
 */
export function decayArea(rate: number, length: number): number {
  const x = rate * length;
  // Not a number where the rate is 0 and the length Infinity, and then too the area is the length.
  return Math.abs(x) >= NONE ? -Math.expm1(-x) / rate : length;
}

/**
 * The `length` at which the area is reached: the inverse of `decayArea`.
 *
 * Infinity where the area is the whole, 1/rate; not a number beyond it.
 *
 * @example decayLength(2, 0.31606) // 0.5
 */
export function decayLength(rate: number, area: number): number {
  const x = rate * area;
  return Math.abs(x) >= NONE ? -Math.log1p(-x) / rate : area;
}
