import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";

/** Past this share of the pressure the density changes too much on the way for one mean: common practice, no source. */
const LARGE_SHARE = 0.1;

/** Says at the result `about` where a loss takes a large share of the pressure before it, both in Pa. */
export function noteLargeLoss(Delta_p: SI, p_in: SI, about: string, trace: Trace): void {
  if (Delta_p > LARGE_SHARE * p_in)
    trace.note({
      about,
      says: "The loss is a larger share of the pressure than the bound. The density then changes so much on the way that one mean no longer stands for it, and the real loss is another.",
      limit: { value: LARGE_SHARE, kind: "fraction" },
    });
}
