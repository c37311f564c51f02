import { gaussLegendre } from "../../numerics/gauss-legendre.ts";
import { poissonMean, poissonTails } from "../../numerics/poisson.ts";
import { acceptFlow, refuseSteep } from "../field/limits.ts";

/** A bank of many channels in which neither stream is mixed: the transfer units of both. */
export interface Bank {
  readonly ofAir: number;
  readonly ofWater: number;
}

/**
 * One of two equal banks. Throws a DomainError where NTU or R is negative, no number, or beyond what can be computed.
 *
 * @example halfOf(3, 2).ofWater // 3.000
 */
export function halfOf(NTU: number, R: number): Bank {
  acceptFlow(NTU, R);
  const ofAir = NTU / 2;
  const ofWater = R * ofAir;
  refuseSteep(NTU, Math.max(ofAir, ofWater));
  return { ofAir, ofWater };
}

/** One stream where it leaves a bank that both entered at one temperature each, at places along the other stream's way. */
export interface Leaving {
  /** In transfer units of the other stream, from where that enters; alike from both ends. */
  readonly places: readonly number[];
  /** What each place counts in a mean over the whole way. Places where the change is less than 1e-12 are left out. */
  readonly share: readonly number[];
  /** How far this stream has come from its own temperature to that of the other one: 0 to 1. */
  readonly change: readonly number[];
}

/** Over the root of the transfer units, a stream brings its change to the other in a front erfc(s)/2: 1e-12 at 5. */
const FRONT = 5;

/** In a rule the nodes lie closer to each other towards the ends, as the root does; this many leave less than 1e-11. */
const nodesFor = (span: number) => Math.ceil(4 + 3 * Math.sqrt(span));

/**
 * The change is 1 - J(own, s) with Goldstein's J, where `own` counts the transfer units of the stream itself and s those of
 * the other: the chance that a count with the mean `own` comes out above one with the mean s.
 */
function leaving(own: number, other: number, span: number): Leaving {
  const { nodes, weights } = gaussLegendre(nodesFor(span));
  const part = span === other ? 1 : span / other;
  const tails = poissonTails(own);
  const places: number[] = [];
  const share: number[] = [];
  const change: number[] = [];
  for (let i = 0; i < nodes.length; i++) {
    const place = (nodes[i] as number) * span;
    places.push(place);
    share.push((weights[i] as number) * part);
    change.push(poissonMean(tails, place));
  }
  return { places, share, change };
}

/** The air, along the water's way. */
export const airLeaving = ({ ofAir, ofWater }: Bank): Leaving =>
  leaving(ofAir, ofWater, Math.min(ofWater, (Math.sqrt(ofAir) + FRONT) ** 2));

/** The water, along the air's way: the whole of it, so that places from both ends fall on one another. */
export const waterLeaving = ({ ofAir, ofWater }: Bank): Leaving => leaving(ofWater, ofAir, ofAir);

/**
 * What a second bank takes off the air that leaves a first, in parts of the difference at the inlet, where the water runs
 * the other way and enters both at the same temperature: of what comes to one place of the second bank, that leaves as much
 * as the first leaves in the opposite place.
 */
export function takenBehind({ share, change }: Leaving): number {
  let sum = 0;
  for (let i = 0; i < share.length; i++) {
    const taken = change[i] as number;
    sum += (share[i] as number) * taken * (1 - taken);
  }
  return sum;
}
