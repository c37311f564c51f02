import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decayArea, decayLength } from "../../../calc/numerics/decay-area.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };

describe("the area under a decay", () => {
  it("is that of the textbook", () => {
    expect(decayArea(1, 1)).toBeCloseTo(1 - 1 / Math.E, 15);
    expect(decayArea(2, Infinity)).toBe(0.5);
    expect(decayArea(-1, 1)).toBeCloseTo(Math.E - 1, 15);
  });

  it("is the length where nothing decays, and keeps its digits beside that", () => {
    expect(decayArea(0, 3)).toBe(3);
    expect(decayArea(0, Infinity)).toBe(Infinity);
    // length - rate length²/2 + rate² length³/6: the first terms of the series.
    for (const rate of [1e-5, 1e-9, 1e-15, -1e-9])
      expect(decayArea(rate, 3) / (3 - 4.5 * rate + 4.5 * rate ** 2) - 1).toBeCloseTo(0, 14);
  });

  it("is turned round", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 4, noNaN: true }),
        fc.double({ min: 1e-12, max: 3, noNaN: true }),
        (rate, length) => Math.abs(decayLength(rate, decayArea(rate, length)) / length - 1) < 1e-9,
      ),
      runs,
    );
    expect(decayLength(2, 0.5)).toBe(Infinity);
  });
});
