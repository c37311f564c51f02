import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";

/** The efficiency of belt or gears between crankshaft and compressor, checked: above 0 to 1. Throws a DomainError at `eta_b`. */
export const acceptDriveEfficiency = ({ eta_b }: { readonly eta_b?: SI | undefined }): SI =>
  accept("eta_b", "The efficiency of the drive", eta_b, { kind: "fraction", above: 0, atMost: 1 });
