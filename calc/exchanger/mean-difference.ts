import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { correctionFromTransferUnits } from "./correction-from-transfer-units.ts";
import { logMeanDifference } from "./log-mean-difference.ts";
import { temperatureGap } from "./temperature-gap.ts";

/** K and a number; missing where one end has no difference left, and F where no size is known. */
export interface MeanDifference {
  readonly Delta_T_lm: SI | undefined;
  readonly F: SI | undefined;
}

interface Ends {
  readonly T_2: SI;
  readonly T_3: SI;
  readonly T_w_in: SI;
  readonly T_w_out: SI;
  readonly P: SI;
  readonly R: SI;
  readonly NTU: SI | undefined;
}

/** Below this, in K, the logarithm of the ends is noise. */
const NO_GAP = 1e-6;
/** Nearer to what counterflow can do than this, its transfer units are noise. */
const NO_REST = 1e-9;
/** Common practice, no source: below it a little more duty needs much more area. */
const STEEP = 0.75;

/** The logarithmic mean difference as in counterflow, and what the arrangement makes of it. */
export function meanDifferenceOf(ends: Ends, trace: Trace): MeanDifference {
  const { T_2, T_3, T_w_in, T_w_out, P, R, NTU } = ends;
  const sign = Math.sign(T_2 - T_w_in);
  const isOpen = sign * (T_2 - T_w_out) > NO_GAP && sign * (T_3 - T_w_in) > NO_GAP;
  if (!isOpen) return { Delta_T_lm: undefined, F: undefined };
  const Delta_T_1 = trace.use(temperatureGap, { T: T_2, T_w: T_w_out }, "air inlet, water outlet");
  const Delta_T_2 = trace.use(temperatureGap, { T: T_3, T_w: T_w_in }, "air outlet, water inlet");
  const Delta_T_lm = trace.use(logMeanDifference, { Delta_T_1, Delta_T_2 }, "cooler");
  if (NTU === undefined || P * Math.max(1, R) > 1 - NO_REST) return { Delta_T_lm, F: undefined };
  const F = trace.use(correctionFromTransferUnits, { P, R, NTU }, "cooler");
  if (F < STEEP)
    trace.note({
      about: "F",
      says: "The arrangement uses little of the temperature difference that is there, less than the bound: a little more duty needs much more area. Common practice, no source.",
      limit: { value: STEEP, kind: "ratio" },
    });
  return { Delta_T_lm, F };
}
