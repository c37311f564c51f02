import { highestPoint } from "../numerics/highest-point.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Arrangement } from "./arrangement.ts";

/** The most that an arrangement can do, and the transfer units on the air at which: Infinity where it only comes near. */
export interface Reach {
  readonly P: SI;
  readonly NTU: SI;
}

/** The place of the peak, over its transfer units. The peak is flat, so that P there is exact to eleven digits. */
const PLACE = 1e-6;
/** A peak that lies beyond so many transfer units, on the air or on the water, does not stand out from what is there. */
const LARGE = 64;

/**
 * The highest temperature effectiveness of an arrangement at R (on the air, 0 or more), over all sizes.
 *
 * Of an arrangement that peaks, the peak; of every other, and where the limit for an endlessly large cooler is higher
 * still, that limit.
 *
 * @example reach(arrangementOf("parallel-cross-2"), 0.5).NTU // 3.14
 */
export function reach({ effectiveness, peaks }: Arrangement, R: SI): Reach {
  const at = (NTU: SI) => effectiveness.compute({ NTU, R });
  const limit = { P: at(Infinity), NTU: Infinity };
  if (!peaks) return limit;
  const peak = peakOf(at, 1 / Math.max(1, R));
  return peak.P > limit.P ? peak : limit;
}

/** The first peak, sought in doubled steps from `start` on; the end where P rises so far. */
function peakOf(at: (NTU: SI) => SI, start: SI): Reach {
  let NTU = start;
  let here = at(NTU);
  for (; NTU < LARGE * start; NTU *= 2) {
    const next = at(2 * NTU);
    if (next <= here) {
      const peak = highestPoint(at, NTU === start ? 0 : NTU / 2, 2 * NTU, PLACE * NTU);
      return { P: at(peak), NTU: peak };
    }
    here = next;
  }
  return { P: here, NTU };
}
