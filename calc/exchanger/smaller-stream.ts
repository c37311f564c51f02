import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { smallerEffectiveness } from "./smaller-effectiveness.ts";
import { smallerRatio } from "./smaller-ratio.ts";
import { smallerTransferUnits } from "./smaller-transfer-units.ts";

/** Effectiveness and ratio as most books have them, on the stream of smaller heat-capacity rate. */
export interface SmallerRatios {
  readonly epsilon: SI;
  readonly C_star: SI;
}

/** Those, and the transfer units of that stream. */
export interface SmallerStream extends SmallerRatios {
  readonly NTU_min: SI;
}

/** The two from their like on the air. */
export const ratiosOnSmaller = (
  { P, R }: { readonly P: SI; readonly R: SI },
  trace: Trace,
): SmallerRatios => ({
  epsilon: trace.use(smallerEffectiveness, { P, R }, "smaller stream"),
  C_star: trace.use(smallerRatio, { R }, "smaller stream"),
});

/** The three from their like on the air. */
export const onSmallerStream = (
  { P, R, NTU }: { readonly P: SI; readonly R: SI; readonly NTU: SI },
  trace: Trace,
): SmallerStream => ({
  ...ratiosOnSmaller({ P, R }, trace),
  NTU_min: trace.use(smallerTransferUnits, { NTU, R }, "smaller stream"),
});
