import { readFileSync } from "node:fs";
import fc from "fast-check";
import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { describe, expect, it, test } from "vitest";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { monteCarlo, type Simulated } from "../../../calc/uncertainty/monte-carlo.ts";
import { propagate } from "../../../calc/uncertainty/propagate.ts";
import type { Correlation, Measurand, Readings } from "../../../calc/uncertainty/readings.ts";
import { uncertaintyCase } from "../../../src/checks/subjects/uncertainty.ts";

function uniformWith(seed: number): () => number {
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
}

function draw(
  f: Measurand,
  readings: Readings,
  correlations: readonly Correlation[] = [],
  { count = 200_000, seed = 1 } = {},
): Simulated {
  const draws = monteCarlo(f, readings, correlations, { count, uniform: uniformWith(seed) });
  let step = draws.next();
  while (!step.done) step = draws.next();
  return step.value;
}

/**
 * JCGM 100:2008, annex H.2, from memory: resistance R, reactance X and impedance Z from five observations each of voltage,
 * current and phase.
 */
describe("annex H.2 of the guide", () => {
  const readings = {
    V: { value: 4.999, u: 0.0032 },
    I: { value: 19.661e-3, u: 0.0095e-3 },
    phi: { value: 1.04446, u: 0.00075 },
  };
  const correlations = [
    { a: "V", b: "I", r: -0.36 },
    { a: "V", b: "phi", r: 0.86 },
    { a: "I", b: "phi", r: -0.65 },
  ];
  test.each<[string, Measurand, number, number]>([
    ["R", ({ V = 0, I = 0, phi = 0 }) => (V / I) * Math.cos(phi), 127.732, 0.071],
    ["X", ({ V = 0, I = 0, phi = 0 }) => (V / I) * Math.sin(phi), 219.847, 0.295],
    ["Z", ({ V = 0, I = 0 }) => V / I, 254.26, 0.236],
  ])("%s is as printed", (_, f, y, u) => {
    const found = propagate(f, readings, correlations);
    // The printed inputs are rounded: V / I of them is 254.26, and R and X move in the third decimal.
    expect(Math.abs(found.y - y)).toBeLessThan(0.006);
    expect(Math.abs(found.u - u)).toBeLessThan(0.0015);
  });
});

/** JCGM 100:2008, annex G.4, from memory: the example of effective degrees of freedom, y = b·x1·x2·x3. */
it("effective degrees of freedom are as in annex G.4 of the guide", () => {
  const readings = {
    x1: { value: 1, u: 0.0025, freedom: 9 },
    x2: { value: 1, u: 0.0057, freedom: 4 },
    x3: { value: 1, u: 0.0082, freedom: 14 },
  };
  const { u, freedom } = propagate(({ x1 = 0, x2 = 0, x3 = 0 }) => x1 * x2 * x3, readings);
  expect(u).toBeCloseTo(0.0103, 4);
  expect(freedom).toBeCloseTo(19, 0);
});

describe("draws agree with a program written apart from this site", () => {
  const { cases } = JSON.parse(readFileSync("content/checks/uncertainty.json", "utf8"));
  test.each<{ in: Record<string, number | string>; out: Record<string, number> }>(cases)(
    "$in.model, case %#",
    ({ in: given, out }) => {
      const { f, readings, correlations } = uncertaintyCase(given);
      const { y, u } = propagate(f, readings, correlations);
      const found = draw(f, readings, correlations);
      expect(Math.abs((found.mean - y) / u - (out["mean_off"] ?? 0))).toBeLessThan(0.01);
      expect(Math.abs(found.u / (out["u_drawn"] ?? 1) - 1)).toBeLessThan(0.007);
      expect(Math.abs((found.low - y) / u - (out["low_off"] ?? 0))).toBeLessThan(0.03);
      expect(Math.abs((found.high - y) / u - (out["high_off"] ?? 0))).toBeLessThan(0.03);
    },
  );
});

describe("to first order", () => {
  const number = fc.double({ min: -100, max: 100, noNaN: true });
  const positive = fc.double({ min: 1e-3, max: 10, noNaN: true });

  it("a sum with weights has the variance that the weights say, correlated or not", () => {
    fc.assert(
      fc.property(
        number,
        number,
        positive,
        positive,
        fc.double({ min: -1, max: 1, noNaN: true }),
        (a, b, ua, ub, r) => {
          const found = propagate(
            ({ x = 0, y = 0 }) => a * x + b * y,
            { x: { value: 1, u: ua }, y: { value: 2, u: ub } },
            [{ a: "x", b: "y", r }],
          );
          const variance = (a * ua) ** 2 + (b * ub) ** 2 + 2 * r * a * b * ua * ub;
          expect(Math.abs(found.u ** 2 - variance)).toBeLessThan(
            1e-8 * ((a * ua) ** 2 + (b * ub) ** 2) + 1e-12,
          );
        },
      ),
    );
  });

  it("errors that go together wholly cancel in a difference", () => {
    const together = [{ a: "T1", b: "T2", r: 1 }];
    const readings = { T1: { value: 400, u: 0.5 }, T2: { value: 320, u: 0.5 } };
    const difference: Measurand = ({ T1 = 0, T2 = 0 }) => T1 - T2;
    expect(propagate(difference, readings, together).u).toBeLessThan(1e-9);
    expect(propagate(difference, readings).u).toBeCloseTo(0.5 * Math.SQRT2, 9);
  });

  it("shares and what is shared sum to one", () => {
    const { share, sharedShare } = propagate(
      ({ x = 0, y = 0 }) => x * y,
      { x: { value: 3, u: 0.1 }, y: { value: 2, u: 0.2 } },
      [{ a: "x", b: "y", r: 0.4 }],
    );
    expect((share["x"] ?? 0) + (share["y"] ?? 0) + sharedShare).toBeCloseTo(1, 12);
  });

  it("takes a slope to one side at the edge of what is possible", () => {
    const root: Measurand = ({ x = 0 }) => {
      if (x < 1) throw new DomainError("x", "x has to be 1 or more.");
      return x ** 2;
    };
    expect(propagate(root, { x: { value: 1, u: 0.01 } }).sensitivity["x"]).toBeCloseTo(2, 6);
  });

  test.each<[string, Readings, readonly Correlation[], string]>([
    ["a negative uncertainty", { x: { value: 1, u: -1 } }, [], "x"],
    ["no number", { x: { value: 1, u: Number.NaN } }, [], "x"],
    ["no degrees of freedom", { x: { value: 1, u: 1, freedom: 0 } }, [], "x"],
    [
      "a correlation above one",
      { x: { value: 1, u: 1 }, y: { value: 1, u: 1 } },
      [{ a: "x", b: "y", r: 1.1 }],
      "correlation",
    ],
    ["a reading with itself", { x: { value: 1, u: 1 } }, [{ a: "x", b: "x", r: 0.5 }], "correlation"],
    [
      "correlations that contradict",
      { x: { value: 1, u: 1 }, y: { value: 1, u: 1 }, z: { value: 1, u: 1 } },
      [
        { a: "x", b: "y", r: 0.9 },
        { a: "y", b: "z", r: 0.9 },
        { a: "x", b: "z", r: -0.9 },
      ],
      "correlation",
    ],
  ])("%s is refused", (_, readings, correlations, field) => {
    const attempt = () => propagate(({ x = 0, y = 0, z = 0 }) => x + y + z, readings, correlations);
    expect(attempt).toThrow(DomainError);
    expect(attempt).toThrow(expect.objectContaining({ field }));
  });
});

describe("draws", () => {
  const readings = { x: { value: 2, u: 0.1 }, y: { value: 5, u: 0.3, spread: "rectangular" } } as const;
  const f: Measurand = ({ x = 0, y = 0 }) => x * y;

  it("are the same with the same seed, and others with another", () => {
    const few = { count: 1000, seed: 3 };
    expect(draw(f, readings, [], few)).toEqual(draw(f, readings, [], few));
    expect(draw(f, readings, [], { count: 1000, seed: 4 }).mean).not.toBe(draw(f, readings, [], few).mean);
  });

  it("tell how far they are", () => {
    const draws = monteCarlo(f, readings, [], { count: 250, uniform: uniformWith(1) });
    expect([...draws]).toEqual([100, 200, 250]);
  });

  it("count those that have no value, and refuse where most have none", () => {
    const edge: Measurand = ({ x = 0 }) => {
      if (x < 0) throw new DomainError("x", "x has to be 0 or more.");
      return x;
    };
    const { lost, values } = draw(edge, { x: { value: 1, u: 1 } }, [], { count: 20_000, seed: 1 });
    // A standard normal number is below -1 in 15.87 % of draws.
    expect(lost / 20_000).toBeCloseTo(0.1587, 2);
    expect(values.length + lost).toBe(20_000);
    expect(() => draw(edge, { x: { value: -1, u: 1 } }, [], { count: 1000, seed: 1 })).toThrow(DomainError);
  });

  it("refuse to draw rectangular errors together", () => {
    expect(() => draw(f, readings, [{ a: "x", b: "y", r: 0.5 }], { count: 10, seed: 1 })).toThrow(/normally/);
  });
});
