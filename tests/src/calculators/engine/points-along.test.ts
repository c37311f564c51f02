import { describe, expect, test } from "vitest";
import { partWithValues, pointsAlong } from "../../../../src/calculators/engine/points-along.ts";

const valued = (points: ReturnType<typeof pointsAlong>) => points.filter(([, y]) => Number.isFinite(y));

describe("points along a way", () => {
  test("takes even steps where there are values throughout, and both ends", () => {
    const points = pointsAlong((x) => 2 * x, 1, 5);
    expect(points).toHaveLength(41);
    expect([points[0], points[20], points[40]]).toEqual([
      [1, 2],
      [3, 6],
      [5, 10],
    ]);
  });

  test("leads on to where a curve ends, on either side, in order", () => {
    // A circle about 0 whose ends lie between two steps.
    const radius = 0.987654;
    const points = pointsAlong((x) => Math.sqrt(radius ** 2 - x ** 2), -2, 2);
    const found = valued(points);
    expect(found[0]?.[0]).toBeCloseTo(-radius, 4);
    expect(found.at(-1)?.[0]).toBeCloseTo(radius, 4);
    expect(points.map(([x]) => x)).toEqual(points.map(([x]) => x).sort((a, b) => a - b));
    expect(points.length).toBeLessThan(60);
    // No part of a step is missing: the curve comes down to its axis, and no piece of it is long.
    const rises = found.slice(1).map(([, y], i) => Math.abs(y - (found[i]?.[1] ?? 0)));
    expect(Math.max(...rises)).toBeLessThan(0.15);
    expect(found[0]?.[1]).toBeLessThan(0.02);
    expect(found.at(-1)?.[1]).toBeLessThan(0.02);
  });

  test("stands at places where the function was asked, and says what it gave", () => {
    const f = (x: number) => (x < 0.3141 ? 1 / (1 - x) : Number.NaN);
    for (const [x, y] of pointsAlong(f, 0, 1)) expect(y).toBe(f(x));
    expect(valued(pointsAlong(f, 0, 1)).at(-1)?.[0]).toBeCloseTo(0.3141, 4);
  });

  test("says which points it added", () => {
    const points = pointsAlong((x) => (x > 0.31 && x < 0.61 ? Number.NaN : x), 0, 1);
    const even = points.filter(([, , leadsOn]) => !leadsOn);
    expect(even).toHaveLength(41);
    even.forEach(([x], i) => {
      expect(x).toBeCloseTo(i / 40, 12);
    });
    // Both ends of the gap are led on to.
    expect(points.filter(([, , leadsOn]) => leadsOn)).toHaveLength(14);
  });

  test("takes an infinite value for none, and adds nothing where a step is the last that has one", () => {
    expect(valued(pointsAlong((x) => 1 / x, 0, 1))[0]?.[0]).toBeLessThan(1e-4);
    expect(pointsAlong((x) => (x <= 0.5 ? x : Number.NaN), 0, 1)).toHaveLength(41);
    expect(valued(pointsAlong(() => Number.NaN, 0, 1))).toEqual([]);
  });
});

describe("the part of a pointsAlong that is drawn", () => {
  const part = (f: (x: number) => number, kept: readonly number[] = []) =>
    partWithValues(pointsAlong(f, 0, 40), kept, 0, 40);
  const between = (low: number, high: number) => (x: number) => (x >= low && x <= high ? x : Number.NaN);

  test("is the whole span where there are values throughout, or none at all", () => {
    expect(part(Math.abs)).toEqual([0, 40]);
    expect(part(() => Number.NaN)).toEqual([0, 40]);
  });

  test("goes a little beyond the values, and never beyond the span", () => {
    const [from, to] = part(between(10, 20));
    expect(from).toBeLessThan(10);
    expect(from).toBeGreaterThan(8);
    expect(to).toBeGreaterThan(20);
    expect(to).toBeLessThan(22);
    expect(part(between(0, 39))).toEqual([0, 40]);
  });

  test("has in it what has to be kept, with or without values", () => {
    const [from, to] = part(between(10, 20), [5, 30]);
    expect(from).toBeLessThan(5);
    expect(to).toBeGreaterThan(30);
    const [low, high] = part(() => Number.NaN, [7]);
    expect(low).toBeLessThan(7);
    expect(high).toBeGreaterThan(7);
  });
});
