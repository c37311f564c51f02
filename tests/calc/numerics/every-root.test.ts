import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { everyRoot } from "../../../calc/numerics/every-root.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };

const grid = (from: number, to: number, steps = 40) =>
  Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps);

const tenFigures = (x: number) => Number(x.toPrecision(10));

const rootsOf = (f: (x: number) => number, from: number, to: number) =>
  everyRoot(f, grid(from, to), 1).roots.map(tenFigures);

describe("every root", () => {
  it("finds roots that are known in closed form", () => {
    expect(rootsOf((x) => (x - 1.3) * (x - 2.7), 0, 4)).toEqual([1.3, 2.7]);
    expect(rootsOf(Math.sin, 1, 10)).toEqual([1, 2, 3].map((n) => tenFigures(n * Math.PI)));
    expect(rootsOf((x) => x, 0, 4)).toEqual([0]);
    expect(rootsOf((x) => x - 4, 0, 4)).toEqual([4]);
  });

  it("finds a pair between two points, and a touch", () => {
    expect(rootsOf((x) => (x - 1.01) * (x - 1.04), 0, 4)).toEqual([1.01, 1.04]);
    const [touch, ...others] = rootsOf((x) => (x - 1.33) ** 2, 0, 4);
    expect(touch).toBeCloseTo(1.33, 6);
    expect(others).toEqual([]);
    expect(rootsOf((x) => Math.abs(x - 1.33), 0, 4)[0]).toBeCloseTo(1.33, 6);
  });

  it("takes neither a pole nor a jump for a root", () => {
    expect(rootsOf((x) => 1 / (x - 1.33), 0, 4)).toEqual([]);
    expect(rootsOf((x) => Math.tan(x), 1, 4)).toEqual([tenFigures(Math.PI)]);
    expect(rootsOf((x) => (x < 1.33 ? -1 : 1), 0, 4)).toEqual([]);
  });

  it("says how near it comes where nothing is zero", () => {
    const { roots, nearest, lowest } = everyRoot((x) => (x - 1.33) ** 2 + 2, grid(0, 4), 1);
    expect(roots).toEqual([]);
    expect(nearest?.x).toBeCloseTo(1.33, 6);
    expect(nearest?.y).toBeCloseTo(2, 12);
    expect(lowest).toBeCloseTo(2, 12);
  });

  it("goes as far as there are values, and finds what lies at their end", () => {
    const half = (x: number) => (x < 1.33 ? Number.NaN : Math.sqrt(x - 1.33) - 0.01);
    expect(rootsOf(half, 0, 4)).toEqual([1.3301]);
    const { nearest } = everyRoot((x) => half(x) + 0.5, grid(0, 4), 1);
    expect(nearest?.x).toBeCloseTo(1.33, 8);
    expect(nearest?.beyond).toBeLessThan(1.33);
    expect(nearest?.beyond).toBeCloseTo(1.33, 8);
  });

  it("looks at both sides of a gap that no point fell into", () => {
    const gap = (x: number) => (x > 1.31 && x < 1.34 ? Number.NaN : x < 1.32 ? x - 1.305 : 3);
    expect(rootsOf(gap, 0, 4)).toEqual([1.305]);
    const through = (x: number) => (Math.abs(x - 1.305) < 0.004 ? Number.NaN : x - 1.305);
    expect(rootsOf(through, 0, 4)).toEqual([]);
  });

  it("tells of a stretch of zeros as one", () => {
    const { roots, stretches } = everyRoot((x) => Math.max(0, x - 2), grid(0, 4), 1);
    expect(roots).toEqual([]);
    expect(stretches).toEqual([{ from: 0, to: expect.closeTo(2, 9) }]);
  });

  it("gives nothing where there is no value at all", () => {
    expect(everyRoot(() => Number.NaN, grid(0, 1), 1)).toMatchObject({ roots: [], nearest: null });
    expect(everyRoot((x) => x, [], 1).nearest).toBeNull();
  });

  it("finds three separate roots wherever they lie", () => {
    const apart = fc
      .uniqueArray(fc.integer({ min: 1, max: 39 }), { minLength: 3, maxLength: 3 })
      .map((places) => places.sort((a, b) => a - b).map((place) => place / 10 + 0.013));
    fc.assert(
      fc.property(apart, ([a = 0, b = 0, c = 0]) => {
        const { roots } = everyRoot((x) => (x - a) * (x - b) * (x - c), grid(0, 4), 1);
        expect(roots).toHaveLength(3);
        for (const [i, root] of [a, b, c].entries())
          expect(Math.abs((roots[i] ?? 0) - root)).toBeLessThan(1e-9);
      }),
      runs,
    );
  });
});
