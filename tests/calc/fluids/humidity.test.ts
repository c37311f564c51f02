import { describe, expect, it } from "vitest";
import { ambient } from "../../../calc/fluids/ambient.ts";
import type { AmbientGiven } from "../../../calc/fluids/ambient-humidity.ts";
import { keptHumidity } from "../../../calc/fluids/condensation.ts";
import { dewPoint } from "../../../calc/fluids/dew-point.ts";
import { dewPointAtPressure } from "../../../calc/fluids/dew-point-at-pressure.ts";
import { enhancementFactor } from "../../../calc/fluids/enhancement-factor.ts";
import { humidityRatio } from "../../../calc/fluids/humidity-ratio.ts";
import { latentHeat } from "../../../calc/fluids/latent-heat.ts";
import { saturatedHumidityRatio } from "../../../calc/fluids/saturated-humidity-ratio.ts";
import { overIce, overIceSlope } from "../../../calc/fluids/saturation-over-ice.ts";
import { saturationOverWater } from "../../../calc/fluids/saturation-over-water.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { saturationTemperature } from "../../../calc/fluids/saturation-temperature.ts";
import { vapourPressureFromHumidityRatio } from "../../../calc/fluids/vapour-pressure-from-humidity-ratio.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { plain, recording } from "../../../calc/relation/trace.ts";

const off = (value: number, expected: number) => Math.abs(value / expected - 1);

describe("saturation", () => {
  // IAPWS-IF97, tables 35 and 36.
  it.each([
    [300, 0.00353658941e6],
    [500, 2.63889776e6],
    [600, 12.3443146e6],
  ])("vapour pressure over water at %d K", (T, p) => {
    expect(off(saturationOverWater.compute({ T }), p)).toBeLessThan(1e-8);
  });

  it.each([
    [0.1e6, 372.755919],
    [1e6, 453.035632],
    [10e6, 584.149488],
  ])("saturation temperature at %d Pa", (p, T) => {
    expect(off(saturationTemperature(p), T)).toBeLessThan(1e-8);
  });

  // IAPWS R14-08(2011), check value of the sublimation pressure at 230 K: 8.947 35 Pa.
  it("vapour pressure over ice at 230 K", () => {
    expect(overIce(230)).toBeCloseTo(8.94735, 4);
  });

  it("chooses ice below the triple point and water above, and meets there", () => {
    expect(saturationPressure.compute({ T: 273.1599 })).toBe(overIce(273.1599));
    expect(saturationPressure.compute({ T: 273.16 })).toBe(saturationOverWater.compute({ T: 273.16 }));
    expect(off(saturationOverWater.compute({ T: 273.16 }), overIce(273.16))).toBeLessThan(1e-6);
  });

  it("temperature comes back from the pressure, over ice and over water", () => {
    for (const T of [175, 200, 250, 273.1, 273.16, 280, 350, 500, 640]) {
      expect(saturationTemperature(saturationPressure.compute({ T }))).toBeCloseTo(T, 6);
    }
  });

  it("slope over ice is that of the logarithm", () => {
    for (const T of [180, 230, 270]) {
      const d = 1e-3;
      expect(off(overIceSlope(T), Math.log(overIce(T + d) / overIce(T - d)) / (2 * d))).toBeLessThan(1e-6);
    }
  });

  // Heat of vaporisation in steam tables, from memory.
  it("latent heat", () => {
    expect(off(latentHeat.compute({ T: 311.15 }), 2411.5e3)).toBeLessThan(1e-3);
    expect(off(latentHeat.compute({ T: 273.15 }), 2500.9e3)).toBeLessThan(1e-3);
    expect(off(latentHeat.compute({ T: 333.15 }), 2357.7e3)).toBeLessThan(1e-3);
  });
});

describe("enhancement factor", () => {
  // The Greenspan and Hardy formula evaluated by an independent program.
  it.each([
    [311.15, 280e3, 1.00927],
    [293.15, 101325, 1.00399],
  ])("at %d K, %d Pa", (T, p, f_e) => {
    expect(enhancementFactor.compute({ T, p })).toBeCloseTo(f_e, 5);
  });

  it("over ice joins that over water within 0.02 %", () => {
    const p = 101325;
    const ice = enhancementFactor.compute({ T: 273.15, p });
    const wet = enhancementFactor.compute({ T: 273.17, p });
    expect(off(ice, wet)).toBeLessThan(2e-4);
  });

  it("grows with pressure", () => {
    const at = (p: number) => enhancementFactor.compute({ T: 310, p });
    expect(at(2e5)).toBeLessThan(at(5e5));
    expect(at(5e5)).toBeLessThan(at(10e5));
  });
});

describe("humidity", () => {
  const p = 101325;

  it("humidity ratio and vapour pressure undo each other", () => {
    for (const w of [1e-5, 0.004, 0.03, 0.4]) {
      const p_v = vapourPressureFromHumidityRatio.compute({ w, p });
      expect(humidityRatio.compute({ p_v, p })).toBeCloseTo(w, 12);
    }
  });

  it("dew point undoes the saturation pressure", () => {
    expect(dewPoint.compute({ p_v: saturationPressure.compute({ T: 290 }), f_e: 1 })).toBeCloseTo(290, 7);
    expect(dewPoint.compute({ p_v: 1.004 * saturationPressure.compute({ T: 250 }), f_e: 1.004 })).toBeCloseTo(
      250,
      7,
    );
  });

  it("any reading gives back the others", () => {
    const base = { p_0: p, T_0: 303.15 } as const;
    for (const varphi_0 of [0.05, 0.3, 0.8, 1]) {
      const state = ambient({ ...base, humidity: "relative", varphi_0 });
      expect(state.varphi_0).toBeCloseTo(varphi_0, 12);
      const fromDew = ambient({ ...base, humidity: "dew-point", T_dp_0: state.T_dp_0 });
      const fromBulb = ambient({ ...base, humidity: "wet-bulb", T_wb_0: state.T_wb_0 });
      expect(fromDew.w_0).toBeCloseTo(state.w_0, 9);
      expect(fromBulb.w_0).toBeCloseTo(state.w_0, 9);
    }
  });

  it("saturated air has dew point and wet bulb at the dry bulb, and frost works too", () => {
    for (const T_0 of [253.15, 268, 290, 320]) {
      const { T_dp_0, T_wb_0 } = ambient({ p_0: p, T_0, humidity: "relative", varphi_0: 1 });
      expect(T_dp_0).toBeCloseTo(T_0, 6);
      expect(T_wb_0).toBeCloseTo(T_0, 6);
    }
  });

  it("dry air has no dew point", () => {
    const state = ambient({ p_0: p, T_0: 300, humidity: "dry" });
    expect(state.T_dp_0).toBeUndefined();
    expect(state.w_0).toBe(0);
    expect(state.T_wb_0).toBeLessThan(300);
  });

  it("traced and untraced numbers are the same", () => {
    const given: AmbientGiven = { p_0: 1e5, T_0: 306.15, humidity: "relative", varphi_0: 0.85 };
    const trace = recording();
    expect(ambient(given, trace)).toEqual(ambient(given, plain));
    expect(trace.steps.length).toBeGreaterThan(5);
  });
});

/*
 * Island ferry, worked by an independent program: 33 °C, 85 %, 100.6 kPa; charge 280 kPa, cooled from 170 to 38 °C.
 * It used another enhancement factor (Buck: 1.01039 at the charge, ours 1.00927), so its w_s of 15.2500 g/kg is
 * 0.11 % above ours; its ambient w of 27.7557 g/kg with 1.0042 there agrees to 0.02 %.
 */
describe("condensation in a warm, wet place", () => {
  const air = ambient({ p_0: 100.6e3, T_0: 306.15, humidity: "relative", varphi_0: 0.85 });
  const charge = { p: 280e3, T: 311.15 };

  it("humidity ratio and dew points", () => {
    expect(off(air.w_0, 0.0277557)).toBeLessThan(5e-4);
    expect((air.T_dp_0 ?? 0) - 273.15).toBeCloseTo(30.14, 1);
    const p_v = vapourPressureFromHumidityRatio.compute({ w: air.w_0, p: charge.p });
    const T_dp = dewPointAtPressure({ p_v, p: charge.p }, plain, "charge");
    expect((T_dp ?? 0) - 273.15).toBeCloseTo(49.15, 1);
  });

  it("saturated humidity ratio, without and with the enhancement factor", () => {
    const p_ws = saturationPressure.compute(charge);
    expect(p_ws).toBeCloseTo(6632.4, 1);
    const w_s = (f_e: number) => saturatedHumidityRatio.compute({ f_e, p_ws, p: charge.p });
    expect(w_s(1)).toBeCloseTo(0.0150895, 6);
    expect(w_s(1.01039)).toBeCloseTo(0.01525, 6);
    const f_e = enhancementFactor.compute(charge);
    expect(f_e).toBeCloseTo(1.00927, 5);
    expect(off(w_s(f_e), 0.01525)).toBeLessThan(1.5e-3);
    expect(keptHumidity({ ...charge, w: air.w_0 }, plain, "charge")).toBe(w_s(f_e));
  });

  it("keeps all vapour where it is warm enough", () => {
    expect(keptHumidity({ p: 280e3, T: 323.15, w: air.w_0 }, plain, "charge")).toBe(air.w_0);
    expect(keptHumidity({ p: 280e3, T: 700, w: air.w_0 }, plain, "charge")).toBe(air.w_0);
  });
});

describe("readings that cannot be", () => {
  const base = { p_0: 1e5, T_0: 293.15 } as const;
  const cases: readonly (readonly [string, AmbientGiven, string])[] = [
    ["relative humidity above 1", { ...base, humidity: "relative", varphi_0: 1.01 }, "varphi_0"],
    ["negative relative humidity", { ...base, humidity: "relative", varphi_0: -0.1 }, "varphi_0"],
    ["no relative humidity", { ...base, humidity: "relative" }, "varphi_0"],
    ["dew point above dry bulb", { ...base, humidity: "dew-point", T_dp_0: 294 }, "T_dp_0"],
    ["wet bulb above dry bulb", { ...base, humidity: "wet-bulb", T_wb_0: 294 }, "T_wb_0"],
    ["wet bulb colder than dry air makes it", { ...base, humidity: "wet-bulb", T_wb_0: 275 }, "T_wb_0"],
    [
      "vapour alone beyond the barometer",
      { p_0: 20e3, T_0: 370, humidity: "relative", varphi_0: 1 },
      "varphi_0",
    ],
    ["barometer as gauge", { ...base, p_0: 0, humidity: "dry" }, "p_0"],
    ["not a number", { ...base, T_0: Number.NaN, humidity: "dry" }, "T_0"],
    ["too hot", { ...base, T_0: 500, humidity: "dry" }, "T_0"],
  ];

  it.each(cases)("%s", (_, given, field) => {
    try {
      ambient(given);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(DomainError);
      expect((error as DomainError).field).toBe(field);
      expect((error as DomainError).message).toMatch(/\.$/);
    }
  });

  it("names the wet bulb of dry air as the bound, and takes it", () => {
    try {
      ambient({ ...base, humidity: "wet-bulb", T_wb_0: 275 });
      expect.unreachable();
    } catch (error) {
      const bound = (error as DomainError).limit?.value ?? 0;
      expect(bound).toBeGreaterThan(275);
      expect(ambient({ ...base, humidity: "wet-bulb", T_wb_0: bound + 1e-6 }).w_0).toBeCloseTo(0, 7);
    }
  });
});
