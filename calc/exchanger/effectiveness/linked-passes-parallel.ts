import { airLeaving, halfOf, takenBehind, waterLeaving } from "./bank-response.ts";
import { unmixedEffectiveness } from "./cross-unmixed.ts";

/**
 * Temperature effectiveness of the air in two banks of many channels, the water with the air, where each channel goes on as
 * itself: in the same place along the air (`identical`), or as far from the other end (`inverted`).
 *
 * What both banks would do with water that enters them at 0, less what the channels give back in the bank behind of what
 * they took up in front. Throws a DomainError where NTU or R is negative, no number, or beyond what can be computed.
 *
 * @example linkedPassesParallel(3, 1, "identical") // 0.4926
 */
export function linkedPassesParallel(NTU: number, R: number, turn: "identical" | "inverted"): number {
  const bank = halfOf(NTU, R);
  const both = unmixedEffectiveness(NTU / 2, R) + takenBehind(airLeaving(bank));
  // Water without end stays cold and has nothing to give back.
  if (R === 0) return both;
  const { share, change } = waterLeaving(bank);
  const last = change.length - 1;
  let back = 0;
  // A channel that comes to one place gives back what one takes up that leaves in the opposite place.
  for (let i = 0; i <= last; i++)
    back +=
      (share[i] as number) * (change[i] as number) * (change[turn === "inverted" ? i : last - i] as number);
  return both - back / R;
}
