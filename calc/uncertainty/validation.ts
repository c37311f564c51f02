import type { SI } from "../quantity/domain-error.ts";
import type { Simulated } from "./monte-carlo.ts";
import type { Propagated } from "./propagate.ts";

/** 95 % of what is spread normally lies within so many standard deviations: from memory. */
export const NORMAL_95 = 1.96;

/**
 * The numerical tolerance of an uncertainty told to one figure: half of a unit of that figure.
 *
 * Source: JCGM 101:2008, clause 7.9.2; from memory.
 *
 * @example numericalTolerance(0.034) // 0.005
 */
export const numericalTolerance = (u: SI): SI => 0.5 * 10 ** Math.floor(Math.log10(u));

/** Why the first order is not good enough. */
export type Fault =
  /** Some of what the readings may be has no result. */
  | "lost"
  /** The result is bent over the width of the readings, which moves its mean. */
  | "bent"
  /** One reading with its own shape decides, so that the interval is not that of a bell. */
  | "shape";

export interface Validation {
  /** How far the ends of the two intervals of 95 % are apart, the farther of them. */
  readonly apart: SI;
  readonly tolerance: SI;
  readonly isGood: boolean;
  readonly fault?: Fault;
}

/** The standard deviation of the end of an interval of 95 % from `count` normal draws, in u: √(p(1 − p)/n)/φ; from memory. */
const endOff = (count: number): number => Math.sqrt((0.025 * 0.975) / count) / 0.05845;

/** From these parts of u or of all draws on a difference is of that cause. */
const MOVED = 0.05;
const MANY = 1e-3;

/**
 * Whether the first order is good enough, as draws show: the ends of both intervals of 95 % lie closer together than the
 * numerical tolerance of u to one figure, and what so few draws may be off by (three standard deviations).
 *
 * Source: JCGM 101:2008, clause 8; from memory.
 */
export function validate(
  { y, u }: Pick<Propagated, "y" | "u">,
  drawn: Omit<Simulated, "values">,
  count: number,
): Validation {
  const reach = NORMAL_95 * u;
  const apart = Math.max(Math.abs(y - reach - drawn.low), Math.abs(y + reach - drawn.high));
  const tolerance = u > 0 ? numericalTolerance(u) : 0;
  const isGood = drawn.lost <= MANY * count && apart <= tolerance + 3 * endOff(count) * u;
  if (isGood) return { apart, tolerance, isGood };
  const isMoved =
    Math.abs(drawn.mean - y) > MOVED * u ||
    Math.abs(drawn.high + drawn.low - 2 * drawn.mean) > 2 * MOVED * drawn.u ||
    Math.abs(drawn.u - u) > MOVED * u;
  const fault: Fault = drawn.lost > MANY * count ? "lost" : isMoved ? "bent" : "shape";
  return { apart, tolerance, isGood, fault };
}
