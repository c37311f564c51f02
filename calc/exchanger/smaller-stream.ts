import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { smallerEffectiveness } from "./smaller-effectiveness.ts";
import { smallerRatio } from "./smaller-ratio.ts";
import { smallerTransferUnits } from "./smaller-transfer-units.ts";

/** Effectiveness, ratio and transfer units as most books have them, on the stream of smaller heat-capacity rate. */
export interface SmallerStream {
  readonly epsilon: SI;
  readonly C_star: SI;
  readonly NTU_min: SI | undefined;
}

/** The three from their like on the air; without transfer units the first two. */
export const onSmallerStream = (
  { P, R, NTU }: { readonly P: SI; readonly R: SI; readonly NTU: SI | undefined },
  trace: Trace,
): SmallerStream => ({
  epsilon: trace.use(smallerEffectiveness, { P, R }, "smaller stream"),
  C_star: trace.use(smallerRatio, { R }, "smaller stream"),
  NTU_min: NTU === undefined ? undefined : trace.use(smallerTransferUnits, { NTU, R }, "smaller stream"),
});
