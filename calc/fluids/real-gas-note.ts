import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { compressibility } from "./compressibility.ts";
import { secondVirial } from "./second-virial.ts";

/** Up to here, and from 280 K up, air is an ideal gas within 0.3 %. Pa absolute. */
const IDEAL_TO = 0.6e6;
/** Up to here the stated deviation is right to 0.2 %. Pa absolute. */
const FOLLOWED_TO = 2e6;
const SMALL_PERCENT = 0.3;

/**
 * Says by how much the real density differs, where the pressure is above 0.6 MPa or the air so cold that it differs by
 * more than 0.3 %. `about` names the result; p in Pa absolute, T in K.
 */
export function noteRealGas(state: { readonly p: SI; readonly T: SI }, about: string, trace: Trace): void {
  const { p, T } = state;
  if (p > FOLLOWED_TO) {
    trace.note({
      about,
      says: "The density is that of an ideal gas. Above the bound the real density may differ by several per cent, and by how much was not checked.",
      limit: { value: FOLLOWED_TO, kind: "pressure" },
    });
    return;
  }
  const Z = compressibility.compute({ B: secondVirial.compute({ T }), p, T });
  const percent = 100 * (1 / Z - 1);
  const size = Math.abs(percent).toFixed(1);
  if (p <= IDEAL_TO && Number(size) <= SMALL_PERCENT) return;
  const compared =
    size === "0.0" ? "the same within 0.1 %" : `about ${size} % ${percent > 0 ? "higher" : "lower"}`;
  trace.note({
    about,
    says: `The density is that of an ideal gas. The real density here is ${compared}.`,
  });
}
