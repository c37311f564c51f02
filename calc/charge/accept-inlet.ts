import { acceptHumidityRatio } from "../fluids/accept-air.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";

/** Air at the inlet of the compressor, or of the first of them: Pa absolute, K, kg/kg, dry unless given. */
export interface InletGiven {
  readonly p_1?: SI | undefined;
  readonly T_1?: SI | undefined;
  readonly w?: SI | undefined;
}

/**
 * The air at the inlet, checked: 1 kPa, far thinner than any compressor is fed with, to 5 MPa, and no hotter than 500 K, since it
 * is to be compressed. Throws a DomainError that names its field.
 */
export const acceptInlet = ({
  p_1,
  T_1,
  w,
}: InletGiven): { readonly p: SI; readonly T: SI; readonly w: SI } => ({
  p: accept("p_1", "The pressure at the compressor inlet, absolute,", p_1, {
    kind: "pressure",
    atLeast: 1000,
    atMost: 5e6,
  }),
  T: accept("T_1", "The temperature at the compressor inlet", T_1, {
    kind: "temperature",
    atLeast: 173.15,
    atMost: 500,
  }),
  w: acceptHumidityRatio("w", w),
});
