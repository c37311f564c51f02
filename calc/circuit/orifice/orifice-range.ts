import type { SI } from "../../quantity/domain-error.ts";
import type { Kind } from "../../quantity/kinds.ts";
import type { Trace } from "../../relation/trace.ts";
import type { Taps } from "./orifice-plate.ts";

interface Ranged {
  readonly taps: Taps;
  readonly d_l: SI;
  readonly d: SI;
  readonly beta_d: SI;
  readonly Re: SI;
  readonly Delta_p: SI;
  readonly gas: { readonly p_in: SI } | undefined;
}

/** The smallest Reynolds number for which the standard gives its accuracy, by bore ratio, bore in m and taps. */
export function leastReynolds({ taps, beta_d, d_l }: Pick<Ranged, "taps" | "beta_d" | "d_l">): SI {
  if (taps === "flange") return Math.max(5000, 170 * beta_d ** 2 * 1000 * d_l);
  return beta_d <= 0.56 ? 5000 : 16_000 * beta_d ** 2;
}

/** The largest difference of a gas within the standard, as a part of the pressure before the plate. */
export const LARGEST_OF_GAS = 0.25;

/** Notes where a plate leaves the limits of use of ISO 5167-2:2003, clause 5.3, from memory. */
export function noteOrificeRange(plate: Ranged, trace: Trace): void {
  const outside = (about: string, x: SI, [from, to]: readonly [SI, SI], kind: Kind, what: string) => {
    if (x >= from && x <= to) return;
    trace.note({
      about,
      says: `${what} is past the bound, where the limits of the standard end. The result is less sure than half a per cent.`,
      limit: { value: x < from ? from : to, kind },
    });
  };
  const none = Number.POSITIVE_INFINITY;
  outside("d", plate.d, [0.0125, none], "length", "The bore of the plate");
  outside("d_l", plate.d_l, [0.05, 1], "length", "The bore of the pipe");
  outside("beta_d", plate.beta_d, [0.1, 0.75], "ratio", "The ratio of the bores");
  outside("Re", plate.Re, [leastReynolds(plate), none], "ratio", "The Reynolds number in the pipe");
  if (plate.gas)
    outside(
      "Delta_p",
      plate.Delta_p,
      [0, LARGEST_OF_GAS * plate.gas.p_in],
      "pressureDifference",
      "The difference, a quarter of the pressure at most,",
    );
}
