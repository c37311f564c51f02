import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { compressibility } from "./compressibility.ts";
import { secondVirial } from "./second-virial.ts";

/** Up to here air is an ideal gas within 0.3 %, from 280 K up. Pa absolute. */
const IDEAL_TO = 0.6e6;

/** Says by how much the real density differs, where the pressure is above 0.6 MPa. `about` names the result. */
export function noteRealGas(state: { readonly p: SI; readonly T: SI }, about: string, trace: Trace): void {
  const { p, T } = state;
  if (p <= IDEAL_TO) return;
  const Z = compressibility.compute({ B: secondVirial.compute({ T }), p, T });
  const percent = 100 * (1 / Z - 1);
  const size = Math.abs(percent).toFixed(1);
  const compared =
    size === "0.0" ? "the same within 0.1 %" : `about ${size} % ${percent > 0 ? "higher" : "lower"}`;
  trace.note({
    about,
    says: `The density is that of an ideal gas, checked to 0.6 MPa. The real density here is ${compared}.`,
    limit: { value: IDEAL_TO, kind: "pressure" },
  });
}
