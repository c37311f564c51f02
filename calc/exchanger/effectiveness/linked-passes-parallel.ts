import { airLeaving, halfOf, meanTakenTwice, waterLeaving } from "./bank-response.ts";
import { passShareOf } from "./pass-share.ts";

/**
 * Temperature effectiveness of the air in two banks of many channels, the water with the air, where each channel goes on as
 * itself: in the same place along the air (`identical`), or as far from the other end (`inverted`).
 *
 * With water as cold as at first in both banks, the one behind would add what it takes off the air from the one in front.
 * It is short of that by what the channels give back there of what they took up in front; the rest they keep.
 *
 * Throws a DomainError where NTU or R is negative, no number, or beyond what can be computed.
 *
 * @example linkedPassesParallel(3, 1, "identical") // 0.4926
 */
export function linkedPassesParallel(NTU: number, R: number, turn: "identical" | "inverted"): number {
  const bank = halfOf(NTU, R);
  const behind = meanTakenTwice(airLeaving(bank), "same");
  // Water without end stays cold and gives nothing back.
  if (R === 0) return passShareOf(NTU, 2) + behind;
  return behind + meanTakenTwice(waterLeaving(bank), turn === "inverted" ? "same" : "opposite") / R;
}
