import { describe, expect, it } from "vitest";
import { constants } from "../../../calc/constants.ts";
import { compressibility } from "../../../calc/fluids/compressibility.ts";
import { conductivity } from "../../../calc/fluids/conductivity.ts";
import { density } from "../../../calc/fluids/density.ts";
import { dryAirDensity } from "../../../calc/fluids/dry-air-density.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { heatCapacity } from "../../../calc/fluids/heat-capacity.ts";
import { heatCapacityPressureEffect } from "../../../calc/fluids/heat-capacity-pressure-effect.ts";
import { heatCapacityRatio } from "../../../calc/fluids/heat-capacity-ratio.ts";
import { temperatureAtEnthalpy, temperatureAtEntropy } from "../../../calc/fluids/moist-air.ts";
import { argon, carbonDioxide, gas, nitrogen, oxygen, water } from "../../../calc/fluids/nasa-gas.ts";
import { secondVirial } from "../../../calc/fluids/second-virial.ts";
import { specificVolume } from "../../../calc/fluids/specific-volume.ts";
import { temperatureEntropy } from "../../../calc/fluids/temperature-entropy.ts";
import { viscosity } from "../../../calc/fluids/viscosity.ts";

const dry = { w: 0 };
const R_a = constants.R_a.value;
/** Difference relative to the expected value. */
const off = (value: number, expected: number) => Math.abs(value / expected - 1);

describe("the air of this reference", () => {
  it("has the molar mass and gas constant of an independent computation", () => {
    expect(constants.M_a.value).toBeCloseTo(0.02896589, 8);
    expect(R_a).toBeCloseTo(287.0432, 4);
    expect(constants.M_w.value / constants.M_a.value).toBeCloseTo(0.62195, 5);
  });
});

// NIST-JANAF Thermochemical Tables, 4th edition, 1998, from memory: c_p in J/(mol K), H(500) - H(298.15) in kJ/mol.
describe("heat capacity of the single gases, against NIST-JANAF to 0.1 %", () => {
  const R_u = constants.R_u.value;
  const table = [
    ["nitrogen", nitrogen, [29.124, 29.58, 32.697], 5.911],
    ["oxygen", oxygen, [29.376, 31.091, 34.87], 6.084],
    ["carbon dioxide", carbonDioxide, [37.129, 44.627, 54.308], 8.305],
    ["water vapour", water, [33.59, 35.226, 41.268], 6.925],
    ["argon", argon, [20.786, 20.786, 20.786], (20.786 * (500 - 298.15)) / 1000],
  ] as const;

  it.each(table)("%s", (_, species, [at298, at500, at1000], rise) => {
    // One mole of 1 kg: per kilogram is then per mole.
    const mole = gas([[1, species]], 1);
    expect(off(mole.cp(298.15), at298)).toBeLessThan(1e-3);
    expect(off(mole.cp(500), at500)).toBeLessThan(1e-3);
    expect(off(mole.cp(1000), at1000)).toBeLessThan(1e-3);
    expect(off((mole.h(500) - mole.h(298.15)) / 1000, rise)).toBeLessThan(1e-3);
    expect(mole.cp(298.15)).toBeGreaterThan(2.49 * R_u);
  });

  it.each(table)("%s joins its two sets without a step", (_, species) => {
    const mole = gas([[1, species]], 1);
    const [below, above] = [1000, 1000 + 1e-9];
    expect(off(mole.cp(above), mole.cp(below))).toBeLessThan(1e-4);
    expect(mole.h(above) - mole.h(below)).toBeLessThan(1e-5);
    expect(mole.s(above) - mole.s(below)).toBeLessThan(1e-7);
    expect(mole.h(3500 + 1e-9) - mole.h(3500)).toBeLessThan(1e-5);
    expect(Math.abs(mole.s(3500 + 1e-9) - mole.s(3500))).toBeLessThan(1e-7);
  });
});

describe("dry air", () => {
  // Computed by an independent program from the same coefficients.
  it.each([
    [250, 1002.928, 1.40096],
    [300, 1004.828, 1.3999],
    [350, 1008.631, 1.39779],
    [400, 1014.193, 1.39475],
    [450, 1021.35, 1.3909],
    [500, 1029.921, 1.38639],
  ])("heat capacity and its ratio at %d K", (T, expected, ratio) => {
    const c_p = heatCapacity.compute({ T, ...dry });
    expect(off(c_p, expected)).toBeLessThan(1e-5);
    expect(off(heatCapacityRatio.compute({ c_p, R_m: R_a }), ratio)).toBeLessThan(1e-5);
  });

  // Gas tables as printed in Moran and Shapiro, table A-22, from memory: h(300 K) = 300.19 kJ/kg, p_r(300 K) = 1.3860.
  it.each([
    [400, 400.98, 3.806],
    [500, 503.02, 8.411],
    [600, 607.02, 16.28],
  ])("enthalpy and relative pressure at %d K, against the gas tables", (T, h, p_r) => {
    const rise = enthalpy.compute({ T, ...dry }) - enthalpy.compute({ T: 300, ...dry });
    expect(off(300.19 + rise / 1000, h)).toBeLessThan(6e-4);
    const s = temperatureEntropy.compute({ T, ...dry }) - temperatureEntropy.compute({ T: 300, ...dry });
    expect(off(1.386 * Math.exp(s / R_a), p_r)).toBeLessThan(2.5e-3);
  });

  // Lemmon and Jacobsen 2004, check table (100 and 300 K), and iapws 1.5.2 (200 and 400 K), same equations.
  it.each([
    [100, 7.09559, 9.35902, 1e-5],
    [300, 18.523, 26.3529, 1e-5],
    [200, 13.316135, 18.453138, 1e-6],
    [400, 23.043665, 33.430249, 1e-6],
  ])("viscosity and conductivity at %d K", (T, mu, k, tolerance) => {
    expect(off(viscosity.compute({ T }) * 1e6, mu)).toBeLessThan(tolerance);
    expect(off(conductivity.compute({ T }) * 1e3, k)).toBeLessThan(tolerance);
  });

  // U.S. Standard Atmosphere 1976, table at sea level, other formulas: 1 % apart.
  it("viscosity and conductivity agree with the standard atmosphere to 1 %", () => {
    expect(off(viscosity.compute({ T: 288.15 }), 1.7894e-5)).toBeLessThan(0.01);
    expect(off(conductivity.compute({ T: 288.15 }), 0.025326)).toBeLessThan(0.01);
  });

  // iapws 1.5.2, equation of state of Lemmon et al. 2000. Density per kilogram there is 0.02 % less for its molar mass.
  it.each([
    [300, 0.1e6, 1.1616, 1006.35],
    [300, 0.5e6, 5.81485, 1012.68],
    [400, 0.3e6, 2.61134, 1015.74],
    [450, 0.4e6, 3.09319, 1022.93],
  ])("ideal gas against the real one at %d K, %d Pa", (T, p, rho, c_p) => {
    const ideal = heatCapacity.compute({ T, ...dry });
    expect(off(density.compute({ p, R_m: R_a, T }), rho)).toBeLessThan(1.5e-3);
    expect(off(ideal, c_p)).toBeLessThan(9e-3);
    const corrected = ideal + heatCapacityPressureEffect.compute({ T, p });
    expect(off(corrected, c_p)).toBeLessThan(1e-3);
    expect(off(corrected, c_p)).toBeLessThan(off(ideal, c_p) + 1e-4);
  });

  // Values of the reference equation of state, rounded, from an independent program.
  it.each([
    [280, 0.6e6, 0.997],
    [300, 0.5e6, 0.9985],
    [450, 0.4e6, 1.0011],
  ])("compressibility at %d K, %d Pa", (T, p, Z) => {
    const B = secondVirial.compute({ T });
    expect(compressibility.compute({ B, p, T })).toBeCloseTo(Z, 3);
  });
});

describe("moist air", () => {
  const temperatures = [180, 200, 273.15, 299, 400, 650, 999, 1000, 1001, 1800, 3500, 5000];

  it("has zero enthalpy and entropy at 0 °C, dry and moist", () => {
    for (const w of [0, 0.02, 0.5]) {
      expect(enthalpy.compute({ T: 273.15, w })).toBeCloseTo(0, 6);
      expect(temperatureEntropy.compute({ T: 273.15, w })).toBeCloseTo(0, 9);
    }
  });

  it("slope of enthalpy is the heat capacity, slope of entropy is that over T", () => {
    for (const T of temperatures.filter((t) => Math.abs(t - 1000) > 0.5)) {
      for (const w of [0, 0.03]) {
        const d = T * 1e-4;
        const c_p = heatCapacity.compute({ T, w });
        const slope = (f: typeof enthalpy | typeof temperatureEntropy) =>
          (f.compute({ T: T + d, w }) - f.compute({ T: T - d, w })) / (2 * d);
        if (T !== 3500) {
          expect(off(slope(enthalpy), c_p)).toBeLessThan(1e-6);
          expect(off(slope(temperatureEntropy) * T, c_p)).toBeLessThan(1e-6);
        }
      }
    }
  });

  it("vapour raises gas constant and heat capacity, and lowers density", () => {
    const state = { p: 1e5, T: 310 };
    const R_m = gasConstant.compute({ w: 0.03 });
    expect(R_m).toBeGreaterThan(R_a);
    expect(heatCapacity.compute({ T: 310, w: 0.03 })).toBeGreaterThan(heatCapacity.compute({ T: 310, w: 0 }));
    const rho = density.compute({ ...state, R_m });
    expect(rho).toBeLessThan(density.compute({ ...state, R_m: R_a }));
    expect(dryAirDensity.compute({ rho, w: 0.03 }) * 1.03).toBeCloseTo(rho, 12);
    expect(specificVolume.compute({ rho }) * rho).toBeCloseTo(1, 12);
    expect(gasConstant.compute({ w: 1e9 })).toBeCloseTo(constants.R_w.value, 3);
  });

  it("temperature comes back from enthalpy and from entropy", () => {
    for (const T of temperatures) {
      for (const w of [0, 0.03, 1]) {
        expect(temperatureAtEnthalpy(enthalpy.compute({ T, w }), w)).toBeCloseTo(T, 7);
        expect(temperatureAtEntropy(temperatureEntropy.compute({ T, w }), w)).toBeCloseTo(T, 7);
      }
    }
  });

  it("an enthalpy below absolute zero is refused", () => {
    expect(() => temperatureAtEnthalpy(-400e3, 0)).toThrow(/no temperature/);
  });
});
