import { describe, expect, test } from "vitest";
import { NORMAL_95, numericalTolerance, validate } from "../../../calc/uncertainty/validation.ts";

/** Of a normal distribution, as many draws would show it that have no chance in them. */
const normal = (y: number, u: number) => ({
  mean: y,
  u,
  low: y - NORMAL_95 * u,
  high: y + NORMAL_95 * u,
  lost: 0,
});

/** From memory of JCGM 101:2008, 7.9.2: of 0.000 35 told to one figure the tolerance is 0.000 05, of 2 kg it is 0.5 kg. */
test.each([
  [0.000_35, 0.000_05],
  [2, 0.5],
  [0.034, 0.005],
  [99, 5],
])("the numerical tolerance of %d to one figure is %d", (u, tolerance) => {
  expect(numericalTolerance(u)).toBeCloseTo(tolerance, 12);
});

describe("the first order is", () => {
  test("good enough where draws show the same interval", () => {
    expect(validate({ y: 5, u: 0.2 }, normal(5, 0.2), 20_000)).toMatchObject({ isGood: true });
  });

  // JCGM 101:2008, 9.2.3: the sum of four rectangular errors has an interval of ±3.88 for 95 %, where first order gives ±3.92;
  // from memory.
  test("good enough for the sum of four rectangular errors", () => {
    const drawn = { mean: 0, u: 2, low: -3.88, high: 3.88, lost: 0 };
    expect(validate({ y: 0, u: 2 }, drawn, 1e6).isGood).toBe(true);
  });

  // y = x² at x = 0 with u = 1: first order says 0, and 95 % of the draws lie from 0.001 to 5.02 (chi-squared; from memory).
  test("not at the bottom of a parabola, which is bent", () => {
    const drawn = { mean: 1, u: Math.SQRT2, low: 0.001, high: 5.02, lost: 0 };
    expect(validate({ y: 0, u: 0 }, drawn, 20_000)).toMatchObject({ isGood: false, fault: "bent" });
  });

  test("not where draws are lost", () => {
    const drawn = { ...normal(5, 0.2), lost: 300 };
    expect(validate({ y: 5, u: 0.2 }, drawn, 20_000)).toMatchObject({ isGood: false, fault: "lost" });
  });

  // One rectangular error of half-width √3: 95 % lie within 0.95√3 = 1.645, and not 1.96.
  test("not where one rectangular error decides, by its shape", () => {
    const end = 0.95 * Math.sqrt(3) * 0.9;
    const drawn = { mean: 0, u: 0.9, low: -end, high: end, lost: 0 };
    expect(validate({ y: 0, u: 0.9 }, drawn, 20_000)).toMatchObject({ isGood: false, fault: "shape" });
  });
});
