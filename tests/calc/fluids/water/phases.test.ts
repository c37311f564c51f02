import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { saturationOverWater } from "../../../../calc/fluids/saturation-over-water.ts";
import { constantVolumeHeatCapacity, type Phase, speedOfSound } from "../../../../calc/fluids/water/phase.ts";
import { regionOne } from "../../../../calc/fluids/water/region-one.ts";
import { regionTwo } from "../../../../calc/fluids/water/region-two.ts";
import { steamLimit } from "../../../../calc/fluids/water/steam-ranges.ts";

const runs = { numRuns: Number(process.env["FAST_CHECK_RUNS"] ?? 200) };
const unit = fc.double({ min: 0, max: 1, noNaN: true });

/** Pressures on a scale of logarithms, so that the low ones are met too. */
const between = (from: number, to: number, at: number) => from * (to / from) ** at;

interface State {
  readonly T: number;
  readonly p: number;
}
const liquid: fc.Arbitrary<State> = fc.tuple(unit, unit).map(([a, b]) => {
  const T = 274 + 348 * a;
  return { T, p: between(1.01 * saturationOverWater.compute({ T }), 99e6, b) };
});
const steam: fc.Arbitrary<State> = fc.tuple(unit, unit).map(([a, b]) => {
  const T = 274 + 798 * a;
  return { T, p: between(100, Math.min(0.98 * steamLimit(T), 30e6), b) };
});

const slope = (f: (x: number) => number, x: number, step: number) => (f(x + step) - f(x - step)) / (2 * step);
function near(found: number, expected: number, within: number, floor = 0): void {
  const allowed = within * Math.abs(expected) + floor;
  expect(Math.abs(found - expected), `${found} for ${expected}`).toBeLessThanOrEqual(allowed);
}

describe.each([
  ["region 1, liquid", regionOne, liquid],
  ["region 2, steam", regionTwo, steam],
] as const)("%s", (_, phase: Phase, states) => {
  const each = (test: (state: State) => void) => fc.assert(fc.property(states, test), runs);

  it("volume and entropy are the slopes of the Gibbs function", () => {
    each(({ T, p }) => {
      near(
        slope((x) => phase.g(T, x), p, 1e-3 * p),
        phase.v(T, p),
        1e-4,
        1e-9,
      );
      near(-slope((x) => phase.g(x, p), T, 1e-2), phase.s(T, p), 1e-6, 1e-5);
    });
  });

  it("enthalpy is Gibbs function and temperature times entropy", () => {
    each(({ T, p }) => near(phase.g(T, p) + T * phase.s(T, p), phase.h(T, p), 1e-12, 1e-6));
  });

  it("heat capacity is the slope of enthalpy, and over T that of entropy", () => {
    each(({ T, p }) => {
      near(
        slope((x) => phase.h(x, p), T, 1e-2),
        phase.cp(T, p),
        1e-6,
      );
      near(T * slope((x) => phase.s(x, p), T, 1e-2), phase.cp(T, p), 1e-6);
    });
  });

  it("the slopes of the volume are those of the volume", () => {
    each(({ T, p }) => {
      near(
        slope((x) => phase.v(x, p), T, 1e-2),
        phase.vByT(T, p),
        1e-5,
        1e-12,
      );
      near(
        slope((x) => phase.v(T, x), p, 1e-3 * p),
        phase.vByP(T, p),
        1e-4,
        1e-16,
      );
    });
  });

  it("pressure moves entropy as temperature moves the volume (Maxwell)", () => {
    each(({ T, p }) => near(-slope((x) => phase.s(T, x), p, 1e-3 * p), phase.vByT(T, p), 1e-4, 1e-9));
  });

  it("is stable: pressure makes it smaller, sound has a speed, the heat capacities are in order", () => {
    each(({ T, p }) => {
      expect(phase.vByP(T, p)).toBeLessThan(0);
      expect(speedOfSound(phase, T, p)).toBeGreaterThan(100);
      const cv = constantVolumeHeatCapacity(phase, T, p);
      expect(cv).toBeGreaterThan(0);
      expect(cv).toBeLessThanOrEqual(phase.cp(T, p) * (1 + 1e-12));
    });
  });

  it("sound runs along the isentrope", () => {
    each(({ T, p }) => {
      // dT along an isentrope, so that entropy stays: T vByT dp / cp.
      const dp = 1e-4 * p;
      const dT = (T * phase.vByT(T, p) * dp) / phase.cp(T, p);
      const change = (phase.v(T + dT, p + dp) - phase.v(T - dT, p - dp)) / (2 * dp);
      near(phase.v(T, p) / Math.sqrt(-change), speedOfSound(phase, T, p), 2e-3);
    });
  });
});

// The saturation curve is an equation of its own (IAPWS-IF97, region 4), so liquid and steam need not agree with it.
describe("on the saturation curve", () => {
  const curve = unit.map((a) => 273.16 + 349 * a);

  it("liquid and steam have the same Gibbs function, within 0.015 kJ/kg", () => {
    fc.assert(
      fc.property(curve, (T) => {
        const p = saturationOverWater.compute({ T });
        expect(Math.abs(regionOne.g(T, p) - regionTwo.g(T, p))).toBeLessThan(15);
      }),
      runs,
    );
  });

  it("the heat of vaporisation is that of Clausius and Clapeyron, within 0.02 %", () => {
    fc.assert(
      fc.property(curve, (T) => {
        const p = saturationOverWater.compute({ T });
        const dpdT = slope((x) => saturationOverWater.compute({ T: x }), T, 1e-3);
        const heat = regionTwo.h(T, p) - regionOne.h(T, p);
        near(T * (regionTwo.v(T, p) - regionOne.v(T, p)) * dpdT, heat, 2e-4);
      }),
      runs,
    );
  });

  // Definition of the zero by the IAPWS: u = s = 0 for the liquid at 273.16 K and 611.657 Pa.
  it("internal energy and entropy of the liquid are zero at the triple point", () => {
    const [T, p] = [273.16, 611.657];
    expect(Math.abs(regionOne.h(T, p) - p * regionOne.v(T, p))).toBeLessThan(1e-3);
    expect(Math.abs(regionOne.s(T, p))).toBeLessThan(1e-4);
  });
});

// IAPWS-IF97, check value beside equation 5, from memory: 16.5291643 MPa at 623.15 K.
describe("the limit of steam", () => {
  it("joins the saturation curve and the boundary of region 3", () => {
    near(steamLimit(623.15 + 1e-9), 16.5291643e6, 1e-8);
    near(steamLimit(623.15 - 1e-9), steamLimit(623.15 + 1e-9), 1e-5);
  });
});
