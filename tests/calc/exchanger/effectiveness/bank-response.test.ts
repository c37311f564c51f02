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

  // Where both streams have crossed the same number x of transfer units they are as far apart as the Bessel function
  // e^(-2x) I0(2x) says; it is 0.3085083 for x = 1 (Abramowitz and Stegun, table 9.8, from memory).
  it("is apart at the end of equal ways by what tables have", () => {
    const bank = { ofAir: 1, ofWater: 1 };
    const { places, change } = airLeaving(bank);
    const water = waterLeaving(bank);
    // The change at the very end, from the polynomial through all places.
    const at = (x: number, of: readonly number[]) =>
      of.reduce(
        (sum, value, i) =>
          sum +
          places.reduce(
            (product, place, j) =>
              j === i ? product : (product * (x - place)) / ((places[i] as number) - place),
            value,
          ),
        0,
      );
    expect(1 - at(1, change) - at(1, water.change)).toBeCloseTo(0.3085083, 6);
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
