import fc from "fast-check";
import { expect, test } from "vitest";
import { monotoneCurve } from "../../../calc/numerics/monotone-curve.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };

const points = [
  [0, 0],
  [15, 2],
  [30, 7],
  [45, 15],
  [60, 27],
  [75, 38],
  [90, 41],
] as const;

/** Computed with PchipInterpolator of scipy 1.10. */
const outside = [
  [5, 0.380952381],
  [20, 3.263736264],
  [40, 11.95954416],
  [50, 18.68309179],
  [70, 35.299977],
  [88, 40.92685714],
] as const;

test("it is the curve that another program draws", () => {
  const curve = monotoneCurve(points);
  for (const [x, y] of outside) expect(curve(x)).toBeCloseTo(y, 7);
});

test("it goes through its points and never turns between them", () => {
  const rising = fc
    .array(
      fc.tuple(fc.double({ min: 0.01, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
      {
        minLength: 2,
        maxLength: 8,
      },
    )
    .map((steps) => {
      let [x, y] = [0, 0];
      return steps.map(([dx, dy]) => {
        x += dx;
        y += dy;
        return [x, y] as const;
      });
    });
  fc.assert(
    fc.property(rising, fc.double({ min: 0, max: 1, noNaN: true }), (some, part) => {
      const curve = monotoneCurve(some);
      for (const [x, y] of some) expect(curve(x)).toBe(y);
      for (let i = 1; i < some.length; i++) {
        const [[a, low], [b, high]] = [some[i - 1], some[i]] as [(typeof some)[0], (typeof some)[0]];
        const y = curve(a + part * (b - a));
        expect(y).toBeGreaterThanOrEqual(low - 1e-12);
        expect(y).toBeLessThanOrEqual(high + 1e-12);
      }
    }),
    runs,
  );
});

test("a straight line stays straight", () => {
  const line = monotoneCurve([
    [0, 1],
    [2, 5],
  ]);
  expect(line(0.5)).toBe(2);
});

test("no curve without two points in order, and none outside them", () => {
  expect(() => monotoneCurve([[0, 1]])).toThrow(RangeError);
  expect(() =>
    monotoneCurve([
      [1, 1],
      [0, 2],
    ]),
  ).toThrow(RangeError);
  expect(() => monotoneCurve(points)(91)).toThrow(RangeError);
  expect(() => monotoneCurve(points)(-1)).toThrow(RangeError);
});
