import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  airLeaving,
  halfOf,
  type Leaving,
  takenBehind,
  waterLeaving,
} from "../../../../calc/exchanger/effectiveness/bank-response.ts";
import { unmixedEffectiveness } from "../../../../calc/exchanger/effectiveness/cross-unmixed.ts";

const flow = [
  fc.double({ min: 1e-6, max: 60, noNaN: true }),
  fc.double({ min: 1e-6, max: 20, noNaN: true }),
] as const;
const meanOf = ({ share, change }: Leaving) =>
  share.reduce((sum, part, i) => sum + part * (change[i] as number), 0);

describe("what leaves one of two banks", () => {
  it("takes off the air what the series of one bank has", () => {
    fc.assert(
      fc.property(...flow, (NTU, R) => {
        const P = unmixedEffectiveness(NTU / 2, R);
        return Math.abs(meanOf(airLeaving(halfOf(NTU, R))) / P - 1) < 1e-11;
      }),
    );
  });

  it("gives the water what it takes off the air", () => {
    fc.assert(
      fc.property(...flow, (NTU, R) => {
        const bank = halfOf(NTU, R);
        return Math.abs(meanOf(waterLeaving(bank)) / (R * meanOf(airLeaving(bank))) - 1) < 1e-11;
      }),
    );
  });

  // Of 1 - J(x, x) tables know that it is (1 - e^(-2x) I0(2x))/2, with 0.3085083225 for x = 1 (Abramowitz and Stegun, table
  // 9.8, from memory). The middle of nine places is at half the way.
  it("is what tables have where both have crossed the same number of transfer units", () => {
    const { places, change } = airLeaving({ ofAir: 1, ofWater: 2 });
    expect(places).toHaveLength(9);
    expect(places[4]).toBeCloseTo(1, 15);
    expect(change[4]).toBeCloseTo((1 - 0.3085083225) / 2, 9);
  });

  it("counts every place of the way once", () => {
    for (const [NTU, R] of [
      [0.3, 1],
      [8, 0.2],
      [60, 1],
      [5, 0],
    ] as const) {
      const bank = halfOf(NTU, R);
      for (const { share } of [airLeaving(bank), waterLeaving(bank)])
        expect(share.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 13);
    }
  });

  it("is taken again by a second bank where little is taken", () => {
    const air = airLeaving(halfOf(1e-6, 0.7));
    expect(takenBehind(air) / meanOf(air)).toBeCloseTo(1, 5);
  });
});
