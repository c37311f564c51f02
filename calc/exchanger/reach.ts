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
 * still, that limit. A caller that has the first peak already hands it in.
 *
 * @example reach(arrangementOf("parallel-cross-2"), 0.5).NTU // 3.14
 */
export function reach(arrangement: Arrangement, R: SI, peak = firstPeak(arrangement, R)): Reach {
  const limit = { P: arrangement.effectiveness.compute({ NTU: Infinity, R }), NTU: Infinity };
  if (!arrangement.peaks) return limit;
  const highest = peak ?? endOf(arrangement, R);
  return highest.P > limit.P ? highest : limit;
}

/** With next to no water that warms, the peak lies beyond what is searched, and is as flat. */
function endOf({ effectiveness }: Arrangement, R: SI): Reach {
  const NTU = LARGE / Math.max(1, R);
  return { P: effectiveness.compute({ NTU, R }), NTU };
}

/**
 * The smallest size past which the effectiveness of an arrangement falls at R, if there is one up to 64 transfer units. It may
 * rise again far beyond.
 */
export function firstPeak({ effectiveness, peaks }: Arrangement, R: SI): Reach | undefined {
  if (!peaks) return undefined;
  const at = (NTU: SI) => effectiveness.compute({ NTU, R });
  const start = 1 / Math.max(1, R);
  let here = at(start);
  for (let NTU = start; NTU < LARGE * start; NTU *= 2) {
    const next = at(2 * NTU);
    if (next <= here) {
      const top = highestPoint(at, NTU === start ? 0 : NTU / 2, 2 * NTU, PLACE * NTU);
      return { P: at(top), NTU: top };
    }
    here = next;
  }
  return undefined;
}
