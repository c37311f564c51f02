import { type GaussRule, gaussLegendre } from "../../numerics/gauss-legendre.ts";
import { poissonChances, poissonMean, poissonTails } from "../../numerics/poisson.ts";

/** One of two equal banks of many channels, in which neither stream is mixed: transfer units of each stream. */
export interface Bank {
  readonly ofAir: number;
  readonly ofWater: number;
}

/** Throws a DomainError where NTU or R is negative, no number, or beyond what can be computed. */
export function halfOf(NTU: number, R: number): Bank {
  acceptFlow(NTU, R);
  const ofAir = NTU / 2;
  const ofWater = R * ofAir;
  refuseSteep(NTU, Math.max(ofAir, ofWater));
  return { ofAir, ofWater };
}

/** Places along the way of a stream, in its own transfer units, as a rule of Gauss has them. */
export interface Places {
  readonly at: Float64Array;
  /** What each counts in a mean over the whole way of the stream. */
  readonly share: Float64Array;
}

/**
 * A front is one wide over the root of the transfer units, and the places lie the closer the nearer to the ends; this many
 * give eleven digits.
 */
const placesFor = (length: number) => Math.ceil(5 + 3 * Math.sqrt(length));

function places(length: number, whole: number): Places {
  const { nodes, weights }: GaussRule = gaussLegendre(placesFor(length));
  const part = length === whole ? 1 : length / whole;
  return { at: nodes.map((node) => node * length), share: weights.map((weight) => weight * part) };
}

/** Of the front that one stream leaves in the other, erfc(s)/2 at a distance of s, this holds all but 1e-12. */
const FRONT = 5;

/** Places along the water's way, as far as air that leaves there has changed at all. */
export const alongWater = ({ ofAir, ofWater }: Bank): Places =>
  places(Math.min(ofWater, (Math.sqrt(ofAir) + FRONT) ** 2), ofWater);

export const alongAir = ({ ofAir }: Bank): Places => places(ofAir, ofAir);

/**
 * How far a stream that crosses `own` of its transfer units has changed where it leaves, in parts of the difference with
 * which both entered: 1 - J(own, at), where `at` counts the other stream's transfer units from where that enters.
 *
 * 1 - J is the chance that the first of two counts with these means is above the second.
 */
export function changes(own: number, { at }: Places): Float64Array {
  const tails = poissonTails(own);
  const change = new Float64Array(at.length);
  for (let i = 0; i < at.length; i++) change[i] = poissonMean(tails, at[i] as number);
  return change;
}
