import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { leastSquares, solveLinear } from "../../../calc/numerics/least-squares.ts";

// NIST StRD, Misra1a, a nonlinear regression with certified values; from memory.
const y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78];
const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760];

describe("least squares", () => {
  test.each([
    ["far", [500, 0.0001]],
    ["near", [250, 0.0005]],
  ] as const)("Misra1a from its %s start", (_, start) => {
    const [b1 = 0, b2 = 0] = leastSquares(
      ([a = 0, b = 0]) => y.map((one, i) => a * (1 - Math.exp(-b * (x[i] ?? 0))) - one),
      start,
      { tolerance: 1e-9 },
    );
    expect(b1 / 238.94212918).toBeCloseTo(1, 6);
    expect(b2 / 5.5015643181e-4).toBeCloseTo(1, 6);
  });
});

test("a line through random points solves its normal equations", () => {
  const number = fc.double({ min: -10, max: 10, noNaN: true });
  fc.assert(
    fc.property(fc.tuple(number, number, number), ([a, b, c]) => {
      const matrix = [
        [4, 1, 0.5],
        [1, 3, -1],
        [0.5, -1, 5],
      ];
      const right = matrix.map(([p = 0, q = 0, r = 0]) => p * a + q * b + r * c);
      const found = solveLinear(matrix, right);
      for (const [i, value] of [a, b, c].entries()) expect(found[i]).toBeCloseTo(value, 9);
    }),
  );
});
