import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type PowerTerm, powerSum } from "../../../calc/numerics/power-sum.ts";

const terms = fc.array(
  fc.tuple(
    fc.integer({ min: -12, max: 40 }),
    fc.integer({ min: -12, max: 40 }),
    fc.integer({ min: 1, max: 9 }),
  ),
  { minLength: 1, maxLength: 12 },
) as fc.Arbitrary<PowerTerm[]>;
const place = fc.double({ min: 0.7, max: 1.4, noNaN: true });

/** By the power function of the language, term by term. */
const byHand = (all: readonly PowerTerm[], x: number, y: number) =>
  all.reduce((sum, [I, J, n]) => sum + n * x ** I * y ** J, 0);

describe("a sum of powers", () => {
  it("is that of the power function", () => {
    fc.assert(
      fc.property(terms, place, place, (all, x, y) => {
        const expected = byHand(all, x, y);
        expect(Math.abs(powerSum(all)(x, y) / expected - 1)).toBeLessThan(1e-13);
      }),
    );
  });

  it("differentiated by hand is differentiated by order", () => {
    fc.assert(
      fc.property(terms, place, place, (all, x, y) => {
        const byX = all.map(([I, J, n]): PowerTerm => [I - 1, J, n * I]);
        const byXY = byX.map(([I, J, n]): PowerTerm => [I, J - 1, n * J]);
        const byXYY = byXY.map(([I, J, n]): PowerTerm => [I, J - 1, n * J]);
        const size = (some: readonly PowerTerm[]) =>
          byHand(
            some.map(([I, J, n]) => [I, J, Math.abs(n)]),
            x,
            y,
          ) + 1e-300;
        for (const [found, by] of [
          [powerSum(all, 1)(x, y), byX],
          [powerSum(all, 1, 1)(x, y), byXY],
          [powerSum(all, 1, 2)(x, y), byXYY],
        ] as const)
          expect(Math.abs(found - byHand(by, x, y))).toBeLessThan(1e-13 * size(by));
      }),
    );
  });

  it("may be asked in any order, and keeps nothing from one place to the next", () => {
    const sum = powerSum([
      [3, -2, 2],
      [0, 1, 1],
    ]);
    const first = sum(2, 4);
    sum(0.1, 0.3);
    expect(sum(2, 4)).toBe(first);
    expect(first).toBe(5);
  });

  it("takes zero where no exponent is negative", () => {
    expect(
      powerSum([
        [0, 0, 7],
        [2, 3, 5],
      ])(0, 0),
    ).toBe(7);
  });

  it("has nothing left of a constant that is differentiated", () => {
    expect(powerSum([[0, 0, 7]], 1)(2, 3)).toBe(0);
  });
});
