import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lowestIn, spansWithin } from "../../../calc/numerics/lowest-in.ts";

const search = { parts: 100, tolerance: 1e-10 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("the lowest point in a span", () => {
  it("finds the deeper of two valleys, and ends", () => {
    const twoValleys = (x: number) => (x - 1) ** 2 * (x - 4) ** 2 + 0.1 * x;
    expect(lowestIn(twoValleys, { from: 0, to: 5 }, search)).toBeCloseTo(0.99447, 4);
    expect(lowestIn((x) => x, { from: 2, to: 5 }, search)).toBe(2);
    expect(lowestIn((x) => -x, { from: 2, to: 5 }, search)).toBe(5);
    expect(lowestIn((x) => x * x, { from: 3, to: 3 }, search)).toBe(3);
  });

  it("is never above any other point of a smooth valley", () => {
    fc.assert(
      fc.property(number(0, 10), number(0.5, 3), number(0, 10), (bottom, steep, other) => {
        const f = (x: number) => Math.cosh(steep * (x - bottom));
        expect(f(lowestIn(f, { from: 0, to: 10 }, search))).toBeLessThanOrEqual(f(other) * (1 + 1e-12));
      }),
    );
  });
});

describe("the spans that keep to a limit", () => {
  it("are those of a parabola that opens either way", () => {
    const outside = spansWithin((x) => 1 - x * x, { from: -2, to: 3 }, search);
    expect(outside).toHaveLength(2);
    expect(outside[0]?.from).toBe(-2);
    expect(outside[0]?.to).toBeCloseTo(-1, 8);
    expect(outside[1]?.from).toBeCloseTo(1, 8);
    expect(outside[1]?.to).toBe(3);
    expect(spansWithin((x) => x * x - 1, { from: 2, to: 3 }, search)).toEqual([]);
    expect(spansWithin(() => -1, { from: 2, to: 3 }, search)).toEqual([{ from: 2, to: 3 }]);
  });

  it("keep to it at their ends too", () => {
    fc.assert(
      fc.property(number(0.1, 9), number(0.1, 9), (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const excess = (x: number) => (x - low) * (x - high);
        for (const { from, to } of spansWithin(excess, { from: 0, to: 10 }, search)) {
          expect(excess(from)).toBeLessThanOrEqual(0);
          expect(excess(to)).toBeLessThanOrEqual(0);
        }
      }),
    );
  });
});
