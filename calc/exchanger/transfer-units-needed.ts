import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { decayLength } from "../numerics/decay-area.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import type { Arrangement } from "./arrangement.ts";
import { counterflowTransferUnitsOf } from "./counterflow-transfer-units.ts";
import { firstPeak, type Reach, reach } from "./reach.ts";
import { shellTransferUnitsOf } from "./shell-transfer-units.ts";

/** Where the formula can be turned round. */
const turnedRound: Readonly<Record<string, (P: SI, R: SI) => SI>> = {
  counterflow: counterflowTransferUnitsOf,
  "parallel-flow": (P, R) => decayLength(1 + R, P),
  "cross-one-row": (P, R) => decayLength(1, decayLength(R, P)),
  "face-split": (P, R) => decayLength(1, decayLength(R, P)),
  "cross-air-mixed": (P, R) => decayLength(R, decayLength(1, P)),
  "shell-1-2": shellTransferUnitsOf,
};

/** More than this on the air, or on the water, no cooler has. */
export const LARGEST_UNITS = 1000;
const TOLERANCE = 1e-12;
/** Below it, of (1 + R) P, two terms say all that a number can hold. */
const BEGINNING = 1e-8;

const tooMuch = (says: string, P: SI) => new DomainError("P", says, { value: P, kind: "fraction" });

/** The most that an arrangement does with no more than a thousand transfer units on either stream. */
export function reachWithinSize(arrangement: Arrangement, R: SI): Reach {
  const most = reach(arrangement, R);
  const largest = LARGEST_UNITS / Math.max(1, R);
  if (most.NTU <= largest) return most;
  return { P: arrangement.effectiveness.compute({ NTU: largest, R }), NTU: largest };
}

/**
 * Transfer units on the air that an arrangement needs for a temperature effectiveness P at R, both on the air. Of an
 * arrangement that peaks, the smaller cooler of the two. To about twelve digits.
 *
 * Throws a DomainError naming P: where it is below zero, where it is more than the arrangement reaches, with that as the
 * limit, and where it takes more than a thousand transfer units.
 *
 * @example transferUnitsNeeded(arrangementOf("counterflow"), { P: 0.7746, R: 0.5 }) // 2.000
 */
export function transferUnitsNeeded(
  arrangement: Arrangement,
  { P, R }: { readonly P: SI; readonly R: SI },
): SI {
  if (!(P >= 0)) throw tooMuch("The effectiveness has to be at least the bound.", 0);
  const most = reach(arrangement, R);
  const isOutOfReach = Number.isFinite(most.NTU) ? P > most.P : P >= most.P;
  if (isOutOfReach)
    throw tooMuch(
      "This arrangement does not reach that effectiveness at this ratio of the heat-capacity rates, however large the cooler is. It has to be below the bound. More water, or another arrangement, goes further.",
      most.P,
    );
  // Every arrangement begins alike: P = NTU - (1 + R) NTU²/2 + ...
  if ((1 + R) * P < BEGINNING) return P * (1 + ((1 + R) * P) / 2);
  const largest = LARGEST_UNITS / Math.max(1, R);
  const formula = turnedRound[arrangement.id];
  const NTU = formula ? formula(P, R) : searched(arrangement, { P, R }, Math.min(most.NTU, largest));
  if (NTU === undefined || NTU > largest)
    throw tooMuch(
      "That is so near to the most that this arrangement can do that no cooler is large enough. It has to be below the bound.",
      arrangement.effectiveness.compute({ NTU: largest, R }),
    );
  return NTU;
}

/** The root between what counterflow would need, less than which nothing does with, and `to`; missing if it is beyond. */
function searched(
  arrangement: Arrangement,
  { P, R }: { readonly P: SI; readonly R: SI },
  to: SI,
): SI | undefined {
  const missing = (NTU: SI) => arrangement.effectiveness.compute({ NTU, R }) - P;
  const from = counterflowTransferUnitsOf(P, R);
  if (missing(from) >= 0) return from;
  // Past a peak there may be a fall and another rise, and doubled steps could miss the first crossing.
  const peak = firstPeak(arrangement, R);
  if (peak && P <= peak.P && from < peak.NTU)
    return bracketedRoot(missing, from, peak.NTU, { tolerance: TOLERANCE * from });
  let end = Math.min(2 * from, to);
  while (missing(end) < 0) {
    if (end === to) return undefined;
    end = Math.min(2 * end, to);
  }
  return bracketedRoot(missing, from, end, { tolerance: TOLERANCE * from });
}
