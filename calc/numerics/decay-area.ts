/**
 * The area under e^(-rate s) for s from 0 to `length`: (1 - e^(-rate length))/rate, and `length` where the rate is 0.
 *
 * Exact to the last digits for every rate, zero and negative ones included. `length` may be Infinity where the rate is
 * positive.
 *
 * @example decayArea(2, 0.5) // 0.3161
 */
export const decayArea = (rate: number, length: number): number =>
  rate === 0 ? length : -Math.expm1(-rate * length) / rate;

/**
 * The `length` at which the area is reached: the inverse of `decayArea`.
 *
 * Infinity where the area is the whole, 1/rate; not a number beyond it.
 *
 * @example decayLength(2, 0.31606) // 0.5
 */
export const decayLength = (rate: number, area: number): number =>
  rate === 0 ? area : -Math.log1p(-rate * area) / rate;
