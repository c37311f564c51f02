import { isentropicTemperature } from "../../../calc/compression/isentropic-temperature.ts";
import { entropyRise } from "../../../calc/fluids/entropy-rise.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { temperatureEntropy } from "../../../calc/fluids/temperature-entropy.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";

/** Pressure (Pa) and temperature (K) of the air at a place. */
export interface State {
  readonly p: SI;
  readonly T: SI;
}

/** A point of the diagram: entropy above that of the first state in J/(kg K), temperature in K. */
export interface Point {
  readonly s: SI;
  readonly T: SI;
}

const heat = (T: SI): SI => temperatureEntropy.compute({ T, w: 0 });
const R = gasConstant.compute({ w: 0 });

/** The entropy of dry air above that of another state, J/(kg K). Ideal gas. */
export const entropyAbove = (zero: State, { p, T }: State): SI =>
  entropyRise.compute({ s_in: heat(zero.T), s_out: heat(T), R_m: R, p_in: zero.p, p_out: p });

/** Where a compressor without loss would end. */
export const idealEnd = (zero: State, from: State, p: SI): Point => ({
  s: entropyAbove(zero, from),
  T: isentropicTemperature.compute({ s_in: heat(from.T), R_m: R, r: p / from.p, w: 0 }),
});

/** Air on its way from one state to another, its pressure changing evenly with its temperature. */
export const course = (zero: State, from: State, to: State, count = 24): readonly Point[] =>
  Array.from({ length: count + 1 }, (_, i) => {
    const T = from.T + ((to.T - from.T) * i) / count;
    return { s: entropyAbove(zero, { p: from.p + ((to.p - from.p) * i) / count, T }), T };
  });

/** Air of one pressure (Pa), from one temperature (K) to another. */
export const isobar = (zero: State, p: SI, from: SI, to: SI, count?: number): readonly Point[] =>
  course(zero, { p, T: from }, { p, T: to }, count);
