import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { highestPoint } from "../../../calc/numerics/highest-point.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };

describe("the highest point", () => {
  it("finds tops that are known in closed form", () => {
    expect(highestPoint((x) => x * (1 - x), 0, 1, 1e-9)).toBeCloseTo(0.5, 7);
    expect(highestPoint((x) => x * Math.exp(-x), 0, 20, 1e-9)).toBeCloseTo(1, 6);
    expect(highestPoint(Math.sin, 0, 3, 1e-9)).toBeCloseTo(Math.PI / 2, 6);
    expect(highestPoint((x) => -Math.abs(x - 0.3), 0, 1, 1e-9)).toBeCloseTo(0.3, 6);
  });

  it("ends at an end where the hill is cut off", () => {
    expect(highestPoint((x) => x, 0, 1, 1e-9)).toBeCloseTo(1, 6);
    expect(highestPoint((x) => -x, 0, 1, 1e-9)).toBeCloseTo(0, 6);
  });

  it("comes to an end on level ground and on steps", () => {
    for (const f of [() => 1, Math.round, (x: number) => (x < 0.2 ? 1 : 0)]) {
      const x = highestPoint(f, 0, 1, 1e-9);
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(1);
    }
  });

  it("needs few evaluations", () => {
    let count = 0;
    const f = (x: number) => {
      count++;
      return x * Math.exp(-x);
    };
    highestPoint(f, 0, 4, 1e-6);
    expect(count).toBeLessThan(25);
  });

  it("finds the top of any smooth hill", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (top, steep) => {
          const f = (x: number) => -steep * (x - top) ** 2 * (1 + (x - top) / 3);
          return Math.abs(highestPoint(f, 0, 1, 1e-8) - top) < 1e-6;
        },
      ),
      runs,
    );
  });
});
