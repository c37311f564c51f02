import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";

/** The highest pressure ratio of a single compressor that is looked at. */
export const MOST_OF_ONE = 10;

/** The pressure ratio of one compressor, checked: 1 to the highest of one. Throws a DomainError at `field`; `what` begins its sentence. */
export const acceptRatio = (ratio: SI | undefined, field = "r", what = "The pressure ratio"): SI =>
  accept(field, what, ratio, { kind: "ratio", atLeast: 1, atMost: MOST_OF_ONE });
