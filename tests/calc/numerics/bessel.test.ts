import { describe, expect, it } from "vitest";
import { scaledBesselI0 } from "../../../calc/numerics/bessel.ts";

/** The integral of e^(x cos t) over a turn. The trapezoidal rule ends sooner than the digits do. */
function byIntegral(x: number): number {
  const steps = 600;
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += Math.exp(-2 * x * Math.sin((Math.PI * i) / steps) ** 2);
  return sum / steps;
}

describe("the modified Bessel function of order zero, without its exponential", () => {
  // Abramowitz and Stegun, table 9.8, from memory.
  it.each([
    [0, 1],
    [1, 0.4657596077],
    [2, 0.3085083225],
    [5, 0.1835408126],
    [10, 0.1278333372],
  ])("at %d is %d, as printed", (x, value) => {
    expect(scaledBesselI0(x)).toBeCloseTo(value, 9);
  });

  it("is its integral, on both sides of where the series change", () => {
    for (const x of [1e-9, 0.03, 0.7, 3, 9, 15, 19.999, 20, 20.001, 25, 60, 300, 2000])
      expect(Math.abs(scaledBesselI0(x) / byIntegral(x) - 1), `x ${x}`).toBeLessThan(1e-14);
  });
});
