import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { marginOfPressure, mostFlow, pressureLeft } from "../../../calc/flow/pressure-left.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 100) };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("the pressure behind a loss that depends on it", () => {
  const losses = fc.record({ p_in: number(1e4, 1e6), a: number(-0.2, 0.9), b: number(1e-9, 0.2) });

  test("is the higher root, and put back it gives the inlet pressure", () => {
    fc.assert(
      fc.property(losses, ({ p_in, a, b }) => {
        const loss = (p: number) => a * p_in + (b * p_in ** 2) / p;
        const p = pressureLeft(p_in, loss);
        const isPassing = (1 - a) ** 2 - 4 * b;
        if (Math.abs(isPassing) < 1e-9) return;
        if (isPassing < 0 || a >= 1) {
          expect(p).toBeUndefined();
          return;
        }
        // The quadratic equation that the loss makes, solved in closed form.
        const exact = (p_in * (1 - a + Math.sqrt(isPassing))) / 2;
        expect(Math.abs((p ?? Number.NaN) - exact)).toBeLessThan(1e-9 * p_in);
      }),
      runs,
    );
  });

  test("there is none without an inlet pressure", () => {
    expect(pressureLeft(0, (p) => 1 / p)).toBeUndefined();
    expect(pressureLeft(-5, (p) => 1 / p)).toBeUndefined();
    expect(marginOfPressure(-5, (p) => 1 / p)).toBe(-5);
  });

  test("the most flow is where the margin ends", () => {
    const p_in = 200e3;
    const lossAt = (m: number) => (p: number) => (m * m * 1e9) / p;
    const most = mostFlow((m) => marginOfPressure(p_in, lossAt(m)), 100);
    expect(most).toBeCloseTo(p_in / 2 / Math.sqrt(1e9), 9);
    expect(pressureLeft(p_in, lossAt(most * (1 - 1e-6)))).toBeGreaterThan(0);
    expect(pressureLeft(p_in, lossAt(most * (1 + 1e-6)))).toBeUndefined();
  });
});
