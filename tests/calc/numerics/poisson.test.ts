import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { scaledBesselI0 } from "../../../calc/numerics/bessel.ts";
import { poissonMean, poissonTails } from "../../../calc/numerics/poisson.ts";

const means = [0, 1e-12, 0.3, 1, 2.5, 17, 140, 800, 3000];
const mean = fc.oneof(
  fc.double({ min: 0, max: 3, noNaN: true }),
  fc.double({ min: 0, max: 900, noNaN: true }),
);

/** As long as the mean needs it. */
const table = (of: (n: number) => number, most: number) =>
  Float64Array.from({ length: Math.ceil(most + 12 * Math.sqrt(most)) + 40 }, (_, n) => of(n));

describe("what is expected of a count", () => {
  it.each(means)("with the mean %d has that mean, and as variance too", (mean) => {
    expect(
      poissonMean(
        table(() => 1, mean),
        mean,
      ),
    ).toBeCloseTo(1, 14);
    const counted = poissonMean(
      table((n) => n, mean),
      mean,
    );
    expect(Math.abs(counted - mean)).toBeLessThanOrEqual(1e-13 * mean);
    const square = poissonMean(
      table((n) => (n - mean) ** 2, mean),
      mean,
    );
    expect(Math.abs(square - mean)).toBeLessThanOrEqual(1e-12 * mean);
  });

  it("is e^(mean (z - 1)) for z^n", () => {
    fc.assert(
      fc.property(mean, fc.double({ min: 0, max: 1, noNaN: true }), (mean, z) => {
        const expected = Math.exp(mean * (z - 1));
        return (
          Math.abs(
            poissonMean(
              table((n) => z ** n, mean),
              mean,
            ) - expected,
          ) < 1e-13
        );
      }),
    );
  });

  it("takes a table as 0 beyond its end, even where the count hardly ever is inside", () => {
    expect(poissonMean(Float64Array.of(1), 3)).toBeCloseTo(Math.exp(-3), 15);
    expect(poissonMean(Float64Array.of(1, 1), 3)).toBeCloseTo(4 * Math.exp(-3), 15);
    expect(poissonMean(Float64Array.of(1), 500)).toBeLessThan(1e-17);
    expect(poissonMean(new Float64Array(0), 5)).toBe(0);
  });
});

describe("the chance of more events", () => {
  // Tables of the Poisson distribution, from memory.
  it.each([
    [1, 0, 0.632121],
    [1, 2, 0.080301],
    [2, 1, 0.593994],
    [2, 3, 0.142877],
    [5, 4, 0.559507],
    [10, 10, 0.41696],
  ])("than expected %d, above %d, is %d", (mean, n, chance) => {
    expect(poissonTails(mean)[n]).toBeCloseTo(chance, 6);
  });

  it("keeps its figures where it is small", () => {
    // e^-x (x^3/3! + x^4/4! + ...) with x = 1e-4.
    expect((poissonTails(1e-4)[2] as number) / ((1e-12 / 6) * (1 - 0.75e-4 + 0.3e-8))).toBeCloseTo(1, 12);
  });

  it("falls from term to term and ends at nothing", () => {
    for (const mean of means) {
      const tails = [...poissonTails(mean)];
      for (let n = 1; n < tails.length; n++)
        expect(tails[n]).toBeLessThanOrEqual((tails[n - 1] as number) + 1e-18);
      expect(tails.at(-1)).toBe(0);
    }
  });

  it("of one count over another is shared with that of being equal, which is a Bessel function", () => {
    fc.assert(
      fc.property(mean, mean, (x, y) => {
        const equal = Math.exp(-((Math.sqrt(x) - Math.sqrt(y)) ** 2)) * scaledBesselI0(2 * Math.sqrt(x * y));
        const sum = poissonMean(poissonTails(x), y) + poissonMean(poissonTails(y), x) + equal;
        return Math.abs(sum - 1) < 1e-13;
      }),
    );
  });
});
