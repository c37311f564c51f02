import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boilingTemperature } from "../../../../calc/fluids/water/boiling-temperature.ts";
import {
  ATMOSPHERIC_UP_TO,
  waterDensity,
  waterEnthalpy,
} from "../../../../calc/fluids/water/liquid-water.ts";
import { steamDensity } from "../../../../calc/fluids/water/steam-density.ts";
import { temperatureFromEnthalpy } from "../../../../calc/fluids/water/temperature-from-enthalpy.ts";
import { temperatureFromEntropy } from "../../../../calc/fluids/water/temperature-from-entropy.ts";
import { waterHeatCapacity, waterState } from "../../../../calc/fluids/water/water.ts";
import { DomainError } from "../../../../calc/quantity/domain-error.ts";
import { recording } from "../../../../calc/relation/trace.ts";

const off = (value: number, expected: number) => Math.abs(value / expected - 1);
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Mean heat capacity between two temperatures, by the difference of enthalpies. */
const meanWaterHeatCapacity = (T_1: number, T_2: number, p: number) =>
  (waterEnthalpy({ T: T_2, p }) - waterEnthalpy({ T: T_1, p })) / (T_2 - T_1);

function refusal(run: () => unknown): DomainError {
  try {
    run();
  } catch (error) {
    if (error instanceof DomainError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}

// Facts of the handbooks, from memory: densest at 3.98 °C under one atmosphere, boils there at 99.974 °C (ITS-90).
describe("water", () => {
  it("is densest at 4 °C", () => {
    const rho = (t: number) => waterState({ T: 273.15 + t, p: 101325 }).rho;
    expect(rho(3.98)).toBeGreaterThan(rho(3.9));
    expect(rho(3.98)).toBeGreaterThan(rho(4.06));
    expect(rho(3.98)).toBeCloseTo(999.975, 2);
  });

  it("boils at 99.974 °C under one atmosphere", () => {
    expect(waterState({ T: 300, p: 101325 }).T_sat - 273.15).toBeCloseTo(99.974, 2);
  });

  // Reference equation IAPWS-95 at 298.15 K and 0.3 MPa, by an independent program: 997.137 kg/m³.
  it("gets denser under pressure as the reference equation has it", () => {
    expect(waterState({ T: 298.15, p: 3e5 }).rho).toBeCloseTo(997.137, 2);
  });

  // Reference tables of the IAPWS, from memory: 2256.5 kJ/kg at 100 °C.
  it("takes 2256.5 kJ/kg to boil away at 100 °C", () => {
    expect(waterState({ T: 300, p: 101418 }).h_fg / 1000).toBeCloseTo(2256.5, 0);
  });
});

describe("the two descriptions of water", () => {
  const temperatures = Array.from({ length: 111 }, (_, i) => 273.15 + i - (i === 110 ? 0.01 : 0));
  const under = (T: number) => waterState({ T, p: ATMOSPHERIC_UP_TO });
  const above = (T: number) => waterState({ T, p: ATMOSPHERIC_UP_TO * (1 + 1e-12) });

  it("meet where one takes over from the other", () => {
    for (const T of temperatures) {
      const [a, b] = [under(T), above(T)];
      expect(off(a.rho, b.rho)).toBeLessThan(4e-5);
      expect(off(a.c_p, b.c_p)).toBeLessThan(6e-4);
      // A hundredth of a kelvin.
      expect(Math.abs(a.h - b.h)).toBeLessThan(60);
      expect(off(a.mu, b.mu)).toBeLessThan(2e-4);
      expect(off(a.k, b.k)).toBeLessThan(3e-4);
      expect(a.T_sat).toBeCloseTo(b.T_sat, 8);
    }
  });

  it("give differences of enthalpy within 0.06 %", () => {
    for (const rise of [2, 10, 50])
      for (const T of temperatures.filter((one) => one + rise < 383.15)) {
        const mean = (p: number) => meanWaterHeatCapacity(T, T + rise, p);
        expect(off(mean(ATMOSPHERIC_UP_TO), mean(ATMOSPHERIC_UP_TO * (1 + 1e-12)))).toBeLessThan(6e-4);
      }
  });

  it("change over only where the pressure does: what is liquid at one pressure has one description", () => {
    fc.assert(
      fc.property(number(700, 1e6), number(0, 1), number(0, 1), (p, a, b) => {
        const T_sat = boilingTemperature.compute({ p });
        const used = [a, b].map((x) => {
          const trace = recording();
          waterEnthalpy({ T: 273.15 + x * (T_sat - 273.15), p }, trace);
          return trace.steps.map(({ relation }) => relation);
        });
        expect(used[0]).toEqual(used[1]);
      }),
    );
  });
});

describe("single properties", () => {
  const liquid = fc.tuple(number(1e3, 16e6), number(0, 1)).map(([p, x]) => ({
    p,
    T: 273.15 + x * (boilingTemperature.compute({ p }) - 273.15),
  }));

  it("heat capacity is the slope of the enthalpy in use", () => {
    fc.assert(
      fc.property(liquid, ({ T, p }) => {
        const h = (x: number) => waterEnthalpy({ T: x, p });
        // Half a step inside, so that both ends have the same description.
        const [from, to] = [T - 0.02, T - 0.01];
        expect(off((h(to) - h(from)) / (to - from), waterHeatCapacity({ T: T - 0.015, p }))).toBeLessThan(
          1e-6,
        );
      }),
    );
  });

  it("the mean heat capacity is the mean of the heat capacity", () => {
    fc.assert(
      fc.property(liquid, number(0, 1), ({ T, p }, x) => {
        const rise = 0.1 + x * Math.min(60, T - 260);
        const mean = meanWaterHeatCapacity(T, T - rise, p);
        const steps = 600;
        let sum = 0;
        for (let i = 0; i < steps; i++)
          sum += waterHeatCapacity({ T: T - (rise * (i + 0.5)) / steps, p }) / steps;
        expect(off(mean, sum)).toBeLessThan(1e-5);
      }),
      { numRuns: 30 },
    );
  });

  it("lead a search on past boiling, without a break of more than 0.02 K", () => {
    const h = (T: number) => waterEnthalpy({ T, p: 101325 });
    for (let T = 300; T < 500; T += 0.05) {
      expect(h(T + 0.05) - h(T)).toBeGreaterThan(4170 * 0.03);
      expect(Number.isFinite(waterDensity({ T, p: 101325 }))).toBe(true);
    }
  });

  it("temperature comes back from enthalpy and from entropy within 0.025 K", () => {
    fc.assert(
      fc.property(liquid, ({ T, p }) => {
        // Region 1 is meant, so leave the pressures that are described otherwise.
        fc.pre(p > ATMOSPHERIC_UP_TO);
        const { h, s } = waterState({ T, p });
        expect(Math.abs(temperatureFromEnthalpy.compute({ p, h }) - T)).toBeLessThan(0.025);
        expect(Math.abs(temperatureFromEntropy.compute({ p, s }) - T)).toBeLessThan(0.025);
      }),
    );
  });
});

describe("what is refused", () => {
  it("water that boils, with the temperature at which it does", () => {
    const { field, limit, message } = refusal(() => waterState({ T: 373.15, p: 90e3 }));
    expect(field).toBe("T");
    expect(limit?.kind).toBe("temperature");
    expect(limit?.value).toBeCloseTo(boilingTemperature.compute({ p: 90e3 }), 9);
    expect(message).toMatch(/boils above the bound/);
    expect(() => waterState({ T: limit?.value ?? 0, p: 90e3 })).not.toThrow();
  });

  it("ice", () => {
    const { field, limit, message } = refusal(() => waterState({ T: 270, p: 1e5 }));
    expect([field, limit]).toEqual(["T", { value: 273.15, kind: "temperature" }]);
    expect(message).toMatch(/freezes below the bound/);
  });

  it.each([
    [0, 611.657],
    [-1e5, 611.657],
    [20e6, 16.5e6],
  ])("a pressure of %d Pa", (p, value) => {
    expect(refusal(() => waterState({ T: 280, p }))).toMatchObject({
      field: "p",
      limit: { value, kind: "pressure" },
    });
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])("a temperature or pressure of %d", (x) => {
    expect(refusal(() => waterState({ T: x, p: 1e5 })).field).toBe("T");
    expect(refusal(() => waterState({ T: 280, p: x })).field).toBe("p");
  });

  it("boiling where there is none, and steam that would be water", () => {
    expect(refusal(() => boilingTemperature.compute({ p: 23e6 })).field).toBe("p");
    expect(refusal(() => boilingTemperature.compute({ p: 100 })).field).toBe("p");
    const wet = refusal(() => steamDensity.compute({ T: 373.15, p: 2e5 }));
    expect([wet.field, Math.round((wet.limit?.value ?? 0) / 100)]).toEqual(["p", 1014]);
  });

  it("nothing that is liquid: all numbers are there", () => {
    fc.assert(
      fc.property(number(612, 16.5e6), number(0, 1), (p, x) => {
        const T = 273.15 + x * (boilingTemperature.compute({ p }) - 273.15);
        const state = waterState({ T, p });
        for (const value of Object.values(state)) expect(Number.isFinite(value)).toBe(true);
        expect(state.Delta_T_sat).toBeGreaterThanOrEqual(0);
        expect(state.h_fg).toBeGreaterThan(0);
      }),
    );
  });
});
