import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";

/** Says at the result `about` where the manifold is below the compressor inlet, both in Pa; of so many compressors. */
export function noteBelowInlet(
  { p_m, p_1 }: { readonly p_m: SI; readonly p_1: SI },
  about: string,
  trace: Trace,
  compressors = 1,
): void {
  if (p_m < p_1)
    trace.note({
      about,
      says: `The pressure in the manifold is below that at the inlet: the losses take more than the ${compressors > 1 ? "compressors give" : "compressor gives"}.`,
    });
}
