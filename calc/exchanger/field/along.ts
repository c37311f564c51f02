import { decayArea } from "../../numerics/decay-area.ts";
import type { Along } from "../layout.ts";

export interface AlongProfile {
  /** Air and water at x, 0 where the air enters and 1 where it leaves. */
  air(x: number): number;
  water(x: number): number;
}

/**
 * Air at 1 and water at 0 along one channel. The gap between them goes with e^(-z x), where z = NTU (1 - R) against each
 * other and NTU (1 + R) together; it is counted from its wider end, so that no exponential runs out of range.
 */
export function alongProfile(water: Along["water"], NTU: number, R: number): AlongProfile {
  const z = water === "against" ? NTU * (1 - R) : NTU * (1 + R);
  const widest =
    water === "with" ? 1 : 1 / (z >= 0 ? NTU * decayArea(z, 1) + Math.exp(-z) : NTU * decayArea(-z, 1) + 1);
  const air = (x: number) =>
    z >= 0 ? 1 - NTU * widest * decayArea(z, x) : widest * (1 + NTU * decayArea(-z, 1 - x));
  const coldest = air(1);
  return {
    air,
    water: water === "with" ? (x) => R * (1 - air(x)) : (x) => R * (air(x) - coldest),
  };
}
