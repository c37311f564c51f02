import { describe, expect, it } from "vitest";
import { bracketedRoot } from "../../../calc/numerics/bracketed-root.ts";

describe("bracketed root", () => {
  it("finds roots that are known in closed form", () => {
    expect(bracketedRoot((x) => x * x - 2, 0, 2, { tolerance: 1e-13 })).toBeCloseTo(Math.SQRT2, 12);
    expect(bracketedRoot((x) => Math.exp(x) - 5, -10, 10, { tolerance: 1e-13 })).toBeCloseTo(Math.log(5), 12);
    expect(bracketedRoot((x) => (x - 1) ** 3, 0, 3, { tolerance: 1e-9 })).toBeCloseTo(1, 5);
  });

  it("takes an end that is a root", () => {
    expect(bracketedRoot((x) => x - 3, 3, 5, { tolerance: 1e-9 })).toBe(3);
    expect(bracketedRoot((x) => x - 5, 3, 5, { tolerance: 1e-9 })).toBe(5);
  });

  it("settles on a jump through zero", () => {
    expect(bracketedRoot((x) => (x < 0.3 ? -1 : 1), 0, 1, { tolerance: 1e-10 })).toBeCloseTo(0.3, 9);
  });

  it("refuses an interval without a change of sign, and values that are not finite", () => {
    expect(() => bracketedRoot((x) => x * x + 1, -1, 1, { tolerance: 1e-9 })).toThrow(RangeError);
    expect(() => bracketedRoot((x) => 1 / x, 0, 1, { tolerance: 1e-9 })).toThrow(RangeError);
    expect(() =>
      bracketedRoot((x) => (x === 0 || x === 1 ? x - 0.5 : Number.NaN), 0, 1, { tolerance: 1e-9 }),
    ).toThrow(RangeError);
  });

  it("gives up after its limit of evaluations", () => {
    expect(() => bracketedRoot((x) => x ** 3 - 0.1, 0, 1, { tolerance: 1e-15, limit: 4 })).toThrow(
      /4 evaluations/,
    );
  });
});
