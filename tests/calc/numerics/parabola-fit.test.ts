import fc from "fast-check";
import { expect, test } from "vitest";
import { parabolaFit } from "../../../calc/numerics/parabola-fit.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("it is the parabola of another program, computed with polyfit of numpy 1.24", () => {
  const fit = parabolaFit([
    [0, 30.1],
    [5, 29.6],
    [11, 28.9],
    [16, 27.3],
    [20, 26.1],
  ]);
  expect(fit.constant).toBeCloseTo(30.0625683, 6);
  expect(fit.linear).toBeCloseTo(-2.49704192e-2, 9);
  expect(fit.square).toBeCloseTo(-8.74610963e-3, 9);
  expect(5 * fit.rms ** 2).toBeCloseTo(0.06123875, 7);
});

test("points of a parabola give it back, wherever they lie", () => {
  fc.assert(
    fc.property(number(-5, 5), number(-5, 5), number(-5, 5), number(-50, 50), (c, b, a, x) => {
      const at = [x, x + 0.3, x + 1, x + 2.5, x + 3].map((u) => [u, c + b * u + a * u * u] as const);
      const { constant, linear, square } = parabolaFit(at);
      for (const [u, y] of at) expect(constant + linear * u + square * u * u).toBeCloseTo(y, 7);
    }),
    runs,
  );
});

test("no parabola through two places", () => {
  expect(() =>
    parabolaFit([
      [0, 1],
      [0, 2],
      [1, 3],
    ]),
  ).toThrow(RangeError);
});
