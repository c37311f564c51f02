import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { arrangementOf, arrangements } from "../../../calc/exchanger/arrangements.ts";
import { coolerOutletTemperature } from "../../../calc/exchanger/cooler-outlet-temperature.ts";
import { counterflow } from "../../../calc/exchanger/effectiveness/counterflow.ts";
import { crossUnmixed } from "../../../calc/exchanger/effectiveness/cross-unmixed.ts";
import { crossUnmixedApproximation } from "../../../calc/exchanger/effectiveness/cross-unmixed-approximation.ts";
import { waterOutletTemperature } from "../../../calc/exchanger/water-outlet-temperature.ts";
import { fromField, runs, someNTU, someR, withFormula } from "./sample.ts";

const P = (id: string, NTU: number, R: number) => arrangementOf(id).effectiveness.compute({ NTU, R });

/** A part of a number, or of one where the number is small beside it. */
const near = (a: number, b: number, part: number) => Math.abs(a - b) <= part * Math.abs(b);

/** Each at least as much as the one before, but for the last digits. */
function expectRising(values: readonly number[]): void {
  for (const [i, value] of values.entries())
    expect(value).toBeGreaterThanOrEqual((values[i - 1] ?? 0) * (1 - 1e-14));
}

describe.each(withFormula)("$id", ({ id, effectiveness, peaks }) => {
  const at = (NTU: number, R: number) => effectiveness.compute({ NTU, R });

  it("never does more than counterflow, nor than the smaller stream can, and never less than nothing", () => {
    fc.assert(
      fc.property(someNTU, someR, (NTU, R) => {
        const P = at(NTU, R);
        return (
          P >= 0 &&
          P <= counterflow.compute({ NTU, R }) * (1 + 1e-12) &&
          P <= Math.min(1, 1 / R) * (1 + 1e-12)
        );
      }),
      runs,
    );
  });

  it("does nothing without surface", () => {
    for (const R of [0, 1e-9, 0.3, 1, 4]) expect(at(0, R)).toBe(0);
  });

  it("begins as every arrangement does: NTU - (1 + R) NTU²/2", () => {
    for (const NTU of [1e-9, 1e-6, 1e-4])
      for (const R of [0, 1e-9, 0.3, 1, 1.5, 4]) {
        const begin = NTU - ((1 + R) * NTU ** 2) / 2;
        expect(Math.abs(at(NTU, R) - begin)).toBeLessThan(((1 + R) * NTU) ** 3 + 1e-15 * NTU);
      }
  });

  it("is 1 - exp(-NTU) with water that does not warm, and comes to it without loss of digits", () => {
    for (const NTU of [1e-9, 0.01, 0.7, 2, 5, 30]) {
      const cold = -Math.expm1(-NTU);
      expect(near(at(NTU, 0), cold, 1e-14)).toBe(true);
      for (const R of [1e-300, 1e-15, 1e-12, 1e-9])
        expect(near(at(NTU, R), cold, 1e-14 + R * NTU), `NTU ${NTU}, R ${R}`).toBe(true);
    }
  });

  it("is the same seen from the water, where next to none of it flows: R P = 1 - exp(-R NTU)", () => {
    for (const onWater of [0.01, 0.7, 2, 5]) {
      const R = 1e9;
      expect(near(R * at(onWater / R, R), -Math.expm1(-onWater), 1e-7), `on the water ${onWater}`).toBe(true);
    }
  });

  it("is smooth where the capacity rates are equal", () => {
    for (const NTU of [0.1, 1, 3, 10]) {
      const middle = at(NTU, 1);
      const slope = (at(NTU, 1.001) - at(NTU, 0.999)) / 0.002;
      for (const d of [1e-5, 1e-7, 1e-9, 1e-12, 1e-15])
        for (const R of [1 + d, 1 - d]) {
          const off = at(NTU, R) - middle - slope * (R - 1);
          expect(Math.abs(off), `NTU ${NTU}, R ${R}`).toBeLessThan(1e-14 + 1e-5 * d);
        }
    }
  });

  it("ends where its limit says", () => {
    for (const R of [0, 0.2, 0.8, 1.25, 3]) {
      const limit = at(Infinity, R);
      expect(limit).toBeGreaterThan(0);
      expect(near(at(3e4, R), limit, 1e-4), `R ${R}: ${at(3e4, R)} and ${limit}`).toBe(true);
    }
  });

  // Five passes with the air ripple by less than a hundred-thousandth where they have come to their end.
  const ripple = id === "parallel-cross-5" ? 1e-5 : 1e-14;
  if (peaks) {
    it("does not gain by less water, up to its peak", () => {
      fc.assert(
        fc.property(
          fc.double({ min: 0.01, max: 1, noNaN: true }),
          someR,
          fc.double({ min: 1, max: 3, noNaN: true }),
          (NTU, R, more) => at(NTU, R * more) <= at(NTU, R) * (1 + 1e-13),
        ),
        runs,
      );
    });
  } else {
    it("does not lose by more surface", () => {
      fc.assert(
        fc.property(someNTU, someR, fc.double({ min: 1, max: 3, noNaN: true }), (NTU, R, more) => {
          return at(NTU * more, R) >= at(NTU, R) * (1 - ripple) - 1e-300;
        }),
        runs,
      );
    });

    it("does not gain by less water", () => {
      fc.assert(
        fc.property(someNTU, someR, fc.double({ min: 1, max: 3, noNaN: true }), (NTU, R, more) => {
          return at(NTU, R * more) <= at(NTU, R) * (1 + 1e-13);
        }),
        runs,
      );
    });
  }

  it("gives the water what it takes from the air", () => {
    fc.assert(
      fc.property(
        someNTU,
        fc.double({ min: 0.01, max: 10, noNaN: true }),
        fc.double({ min: 290, max: 500, noNaN: true }),
        fc.double({ min: 273.15, max: 350, noNaN: true }),
        (NTU, R, T_in, T_w_in) => {
          const P = at(NTU, R);
          const T_out = coolerOutletTemperature.compute({ T_in, P, T_w_in });
          const T_w_out = waterOutletTemperature.compute({ T_in, P, T_w_in, R });
          expect(Math.abs(R * (T_in - T_out) - (T_w_out - T_w_in))).toBeLessThan(1e-9);
          const [coldest, hottest] = [Math.min(T_in, T_w_in), Math.max(T_in, T_w_in)];
          for (const T of [T_out, T_w_out]) {
            expect(T).toBeGreaterThanOrEqual(coldest - 1e-9);
            expect(T).toBeLessThanOrEqual(hottest + 1e-9);
          }
        },
      ),
      runs,
    );
  });
});

describe.each(fromField)("$id", ({ effectiveness }) => {
  const at = (NTU: number, R: number) => effectiveness.compute({ NTU, R });

  it("lies between nothing and counterflow, and is 1 - exp(-NTU) with water that does not warm", () => {
    for (const NTU of [0, 0.1, 1, 3, 8])
      for (const R of [0, 0.3, 1, 2.5]) {
        expect(at(NTU, R)).toBeGreaterThanOrEqual(0);
        expect(at(NTU, R)).toBeLessThanOrEqual(counterflow.compute({ NTU, R }) + 1e-10);
      }
    for (const NTU of [0.1, 1, 3, 8]) expect(at(NTU, 0)).toBeCloseTo(-Math.expm1(-NTU), 10);
  });
});

it("one pass across, both unmixed, falls evenly with R also for the largest coolers", () => {
  // Long-hand sums of the series in another program.
  expect(P("cross-unmixed", 1000, 0.999)).toBeCloseTo(0.9826425167, 9);
  expect(P("cross-unmixed", 745, 0.9976)).toBeCloseTo(0.9804747911, 9);
  fc.assert(
    fc.property(
      fc.integer({ min: 690, max: 1000 }),
      fc.double({ min: 0.98, max: 1.02, noNaN: true }),
      (NTU, R) => {
        const fall = P("cross-unmixed", NTU, R) - P("cross-unmixed", NTU, R + 1e-3);
        expect(fall).toBeGreaterThan(1e-4);
        expect(fall).toBeLessThan(2e-3);
      },
    ),
    runs,
  );
});

describe("reciprocity: the water, seen as the air is, has R P at R NTU and 1/R", () => {
  it.each([
    ["counterflow", "counterflow"],
    ["parallel-flow", "parallel-flow"],
    ["cross-unmixed", "cross-unmixed"],
    ["cross-mixed", "cross-mixed"],
    ["cross-one-row", "cross-air-mixed"],
    ["cross-air-mixed", "cross-one-row"],
    ["counter-cross-2-remixed", "counter-cross-2-remixed"],
    ["parallel-cross-2-remixed", "parallel-cross-2-remixed"],
    ["shell-1-2", "shell-1-2"],
    ["shell-2-4", "shell-2-4"],
    ["shell-3-6", "shell-3-6"],
  ])("%s and %s", (air, water) => {
    fc.assert(
      fc.property(someNTU, fc.double({ min: 0.05, max: 20, noNaN: true }), (NTU, R) =>
        near(R * P(air, NTU, R), P(water, R * NTU, 1 / R), 1e-12),
      ),
      runs,
    );
  });
});

describe("what the arrangements have to do with each other", () => {
  const grid = [0.2, 1, 2.5, 5].flatMap((NTU) => [0, 0.1, 0.5, 1, 2.5].map((R) => [NTU, R] as const));

  it("at NTU 3 and R 1 the hoses the wrong way round take 0.695 down to 0.482 (worked by an independent program)", () => {
    expect(P("counter-cross-2", 3, 1)).toBeCloseTo(0.695, 3);
    expect(P("parallel-cross-2", 3, 1)).toBeCloseTo(0.482, 3);
  });

  it("the right way round is never worse than the wrong way", () => {
    for (const { id, swapped } of arrangements)
      if (swapped && !id.startsWith("parallel"))
        for (const [NTU, R] of grid)
          expect(P(id, NTU, R), `${id}, NTU ${NTU}, R ${R}`).toBeGreaterThanOrEqual(
            P(swapped, NTU, R) - 1e-10,
          );
  });

  it("more passes against the air come nearer to counterflow", () => {
    for (const [NTU, R] of grid) {
      const chain = [2, 3, 4, 5].map((passes) => P(`counter-cross-${passes}`, NTU, R));
      expectRising([P("cross-one-row", NTU, R), ...chain, P("counterflow", NTU, R)]);
    }
  });

  it("passes side by side with one channel each do what a single row does, whatever their number", () => {
    for (const [NTU, R] of grid)
      expect(near(P("face-split", NTU, R), P("cross-one-row", NTU, R), 1e-14)).toBe(true);
  });

  it("passes side by side with many channels do less than a single pass", () => {
    for (const [NTU, R] of grid)
      expect(P("face-split-rows", NTU, R)).toBeLessThanOrEqual(P("cross-unmixed", NTU, R) * (1 + 1e-15));
  });

  it("more shells come nearer to counterflow", () => {
    for (const [NTU, R] of grid) {
      const chain = ["shell-1-4", "shell-1-2", "shell-2-4", "shell-3-6", "counterflow"];
      expectRising(chain.map((id) => P(id, NTU, R)));
    }
  });
});

describe("the textbooks' approximation of cross-flow, both unmixed", () => {
  const error = (NTU: number, R: number) =>
    crossUnmixedApproximation.compute({ NTU, R }) / crossUnmixed.compute({ NTU, R }) - 1;

  it("is off by what an independent program found", () => {
    const difference = (NTU: number) => error(NTU, 1) * crossUnmixed.compute({ NTU, R: 1 });
    expect(difference(1)).toBeCloseTo(-0.00769, 5);
    expect(difference(2)).toBeCloseTo(0.00116, 5);
    expect(error(0.3, 1)).toBeCloseTo(-0.038, 3);
    expect(error(1, 1)).toBeCloseTo(-0.016, 3);
    expect(error(2.8, 0.45)).toBeCloseTo(0.011, 3);
  });

  it("stays within the error that its declaration states", () => {
    let [low, high] = [0, 0];
    for (let NTU = 0.2; NTU <= 10; NTU *= 1.02)
      for (let R = 0.05; R <= 1.0001; R += 0.05) {
        low = Math.min(low, error(NTU, R));
        high = Math.max(high, error(NTU, R));
      }
    expect(low).toBeCloseTo(-0.038, 3);
    expect(high).toBeCloseTo(0.011, 3);
    expect(crossUnmixedApproximation.accuracy).toMatch(/3\.8 %.*1\.1 %/);
  });
});
