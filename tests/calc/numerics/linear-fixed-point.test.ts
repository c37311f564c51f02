import { describe, expect, it } from "vitest";
import { linearFixedPoint } from "../../../calc/numerics/linear-fixed-point.ts";

/** u -> M u + c */
const affine =
  (M: readonly (readonly number[])[], c: readonly number[]) => (u: Float64Array, to: Float64Array) =>
    to.set(c.map((ci, i) => (M[i] ?? []).reduce((sum, m, j) => sum + m * (u[j] as number), ci)));

describe("fixed point of a linear function", () => {
  it("finds points that are known", () => {
    expect([...linearFixedPoint(affine([[0.5]], [1]), 1, { tolerance: 1e-13 })]).toEqual([2]);
    // Chosen such that (1, 2, 3) is the point; the function does not contract.
    const M = [
      [0, 2, 0],
      [-1, 0, 3],
      [0.5, 0, -4],
    ];
    const found = linearFixedPoint(affine(M, [-3, -6, 14.5]), 3, { tolerance: 1e-12 });
    for (const [i, wanted] of [1, 2, 3].entries()) expect(found[i]).toBeCloseTo(wanted, 10);
  });

  it("gives nothing where nothing is asked for, and zero where nothing comes in", () => {
    expect(linearFixedPoint(() => {}, 0, { tolerance: 1e-13 })).toHaveLength(0);
    expect([...linearFixedPoint(affine([[0.9]], [0]), 1, { tolerance: 1e-13 })]).toEqual([0]);
  });

  it("takes no more directions than there are numbers", () => {
    let calls = 0;
    const f = affine(
      Array.from({ length: 6 }, (_, i) => Array.from({ length: 6 }, (_, j) => Math.sin(3 * i + j) / 7)),
      [1, 2, 3, 4, 5, 6],
    );
    const found = linearFixedPoint(
      (u, to) => {
        calls++;
        f(u, to);
      },
      6,
      { tolerance: 1e-12 },
    );
    const image = new Float64Array(6);
    f(found, image);
    for (let i = 0; i < 6; i++) expect(image[i]).toBeCloseTo(found[i] as number, 11);
    expect(calls).toBeLessThanOrEqual(7);
  });

  it("gives up where there is no such point, and at its limit", () => {
    expect(() => linearFixedPoint(affine([[1]], [1]), 1, { tolerance: 1e-13 })).toThrow(/no fixed point/);
    const slow = affine(
      [
        [0.5, 1],
        [0, 0.25],
      ],
      [1, 1],
    );
    expect(() => linearFixedPoint(slow, 2, { tolerance: 1e-13, limit: 1 })).toThrow(/within 1 directions/);
  });
});
