import { createRequire } from "node:module";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { constants } from "../../../calc/constants.ts";
import { dewPoint } from "../../../calc/fluids/dew-point.ts";
import { humidityRatio } from "../../../calc/fluids/humidity-ratio.ts";
import { humidityRatioFromWetBulb } from "../../../calc/fluids/humidity-ratio-from-wet-bulb.ts";
import { saturatedHumidityRatio } from "../../../calc/fluids/saturated-humidity-ratio.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { vapourPressure } from "../../../calc/fluids/vapour-pressure.ts";
import { wickLatentHeat } from "../../../calc/fluids/wick-latent-heat.ts";

/** The part of the library that is used here; degrees Celsius and pascal. It has no enhancement factor. */
interface Psychrometrics {
  readonly SI: number;
  SetUnitSystem(system: number): void;
  GetSatVapPres(t: number): number;
  GetHumRatioFromRelHum(t: number, relativeHumidity: number, p: number): number;
  GetHumRatioFromTWetBulb(t: number, wetBulb: number, p: number): number;
  GetTDewPointFromRelHum(t: number, relativeHumidity: number): number;
}
const library = createRequire(import.meta.url)("psychrolib") as Psychrometrics;
library.SetUnitSystem(library.SI);

const numRuns = Number(process.env["FAST_CHECK_RUNS"] ?? 200);
const kelvin = (t: number) => t + constants.T_C.value;
const celsius = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });
const humidity = fc.double({ min: 0.05, max: 1, noNaN: true });
const pressure = fc.double({ min: 60e3, max: 400e3, noNaN: true });

/** Hyland and Wexler 1983 in the library against IAPWS here: 0.033 % at most, and up to 0.1 % where it is very cold. */
const FORMULATIONS = 1e-3;
function near(ours: number, theirs: number): void {
  expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(FORMULATIONS * Math.abs(theirs));
}

describe("moist air against an open psychrometric library", () => {
  test("saturation pressure over ice and water from -60 to 150 °C", () => {
    fc.assert(
      fc.property(celsius(-60, 150), (t) =>
        near(saturationPressure.compute({ T: kelvin(t) }), library.GetSatVapPres(t)),
      ),
      { numRuns },
    );
  });

  test("humidity ratio from relative humidity", () => {
    fc.assert(
      fc.property(celsius(-40, 50), humidity, pressure, (t, varphi, p) => {
        const p_ws = saturationPressure.compute({ T: kelvin(t) });
        const p_v = vapourPressure.compute({ varphi, f_e: 1, p_ws });
        near(humidityRatio.compute({ p_v, p }), library.GetHumRatioFromRelHum(t, varphi, p));
      }),
      { numRuns },
    );
  });

  test("dew point within 0.02 K, in whose steps the library seeks it", () => {
    fc.assert(
      fc.property(celsius(-20, 50), humidity, (t, varphi) => {
        const p_ws = saturationPressure.compute({ T: kelvin(t) });
        const p_v = vapourPressure.compute({ varphi, f_e: 1, p_ws });
        const theirs = kelvin(library.GetTDewPointFromRelHum(t, varphi));
        expect(Math.abs(dewPoint.compute({ p_v, f_e: 1 }) - theirs)).toBeLessThan(0.02);
      }),
      { numRuns },
    );
  });

  test("humidity ratio from the wet bulb, over water and over ice", () => {
    fc.assert(
      fc.property(celsius(-20, 50), celsius(0, 3), pressure, (t, depression, p) => {
        const T_wb = kelvin(t - depression);
        const p_ws = saturationPressure.compute({ T: T_wb });
        const w_s = saturatedHumidityRatio.compute({ f_e: 1, p_ws, p });
        const L_wb = wickLatentHeat.compute({ T_wb });
        const ours = humidityRatioFromWetBulb.compute({ T: kelvin(t), T_wb, L_wb, w_s });
        const theirs = library.GetHumRatioFromTWetBulb(t, t - depression, p);
        fc.pre(ours > 0); // a wet bulb lower than dry air can have: the library answers with a floor
        expect(Math.abs(ours - theirs)).toBeLessThanOrEqual(FORMULATIONS * w_s);
      }),
      { numRuns },
    );
  });
});
