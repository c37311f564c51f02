import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { altimeterAltitude } from "./altimeter-altitude.ts";
import { barometerDeviation } from "./barometer-deviation.ts";
import { geopotentialAltitude } from "./geopotential-altitude.ts";
import { pressureAltitude } from "./pressure-altitude.ts";
import { seaLevelAltitude } from "./sea-level-altitude.ts";
import { standardPressure } from "./standard-pressure.ts";
import { standardTemperature } from "./standard-temperature.ts";

/** What is known beside the elevation `z` in m: nothing, the barometer at the place, or one corrected to sea level. Pa. */
export interface BarometerGiven {
  readonly known: "elevation" | "station" | "sea-level";
  readonly z: SI;
  readonly p_0?: SI | undefined;
  readonly p_Q?: SI | undefined;
}

/** m, K, Pa. `Delta_p_std` is the barometer above that of the standard atmosphere at the same elevation. */
export interface BarometerAltitude {
  readonly H: SI;
  readonly T_std: SI;
  readonly p_std: SI;
  readonly p_0: SI;
  readonly p_Q: SI;
  readonly H_p: SI;
  readonly Delta_p_std: SI;
}

/** Weather seldom moves the barometer by more than this part of it. Common practice, no source. */
const WEATHER = 0.06;
const SETTING = "sea-level setting";

/**
 * Barometer, elevation and the standard atmosphere: the pressure at the place, what a sea-level setting would be, the
 * pressure altitude, and how far the barometer is from the standard.
 *
 * Elevation -1 to 20 km, barometer 5 to 120 kPa, sea-level setting 80 to 120 kPa. The sea-level setting is that of
 * altimeters; weather maps correct with the real temperature and differ a little.
 *
 * @example barometerAltitude({ known: "elevation", z: 1850 }).p_0 // 80 992 Pa
 */
export const barometerAltitude: Model<BarometerGiven, BarometerAltitude> = (given, trace = plain) => {
  const place = "at the place";
  const z = accept("z", "The elevation", given.z, { kind: "altitude", atLeast: -1000, atMost: 20e3 });
  const H = trace.use(geopotentialAltitude, { z }, place);
  const T_std = trace.use(standardTemperature, { H }, place);
  const p_std = trace.use(standardPressure, { H }, place);
  const common = { H, T_std, p_std };
  const deviation = (p_0: SI) => trace.use(barometerDeviation, { p_0, p_std }, place);
  /** The setting that makes an altimeter at the place show its elevation. */
  const seaLevel = (H_p: SI) => {
    const H_Q = trace.use(seaLevelAltitude, { H_p, H }, SETTING);
    return trace.use(standardPressure, { H: H_Q }, SETTING);
  };

  switch (given.known) {
    case "elevation":
      trace.note({
        about: "p_0",
        says: `The barometer was taken from the standard atmosphere. Weather moves it by up to ${100 * WEATHER} %; read a barometer where it matters.`,
      });
      return { ...common, p_0: p_std, p_Q: seaLevel(H), H_p: H, Delta_p_std: deviation(p_std) };
    case "station": {
      const p_0 = accept("p_0", "The barometer, as an absolute pressure,", given.p_0, {
        kind: "pressure",
        atLeast: 5e3,
        atMost: 120e3,
      });
      const H_p = trace.use(pressureAltitude, { p: p_0 }, place);
      compare({ p_0, p_std }, trace);
      return { ...common, p_0, p_Q: seaLevel(H_p), H_p, Delta_p_std: deviation(p_0) };
    }
    case "sea-level": {
      const p_Q = accept("p_Q", "The barometer corrected to sea level", given.p_Q, {
        kind: "pressure",
        atLeast: 80e3,
        atMost: 120e3,
      });
      const H_Q = trace.use(pressureAltitude, { p: p_Q }, SETTING);
      const H_p = trace.use(altimeterAltitude, { H, H_Q }, place);
      const p_0 = trace.use(standardPressure, { H: H_p }, "at the pressure altitude");
      compare({ p_0, p_std }, trace);
      return { ...common, p_0, p_Q, H_p, Delta_p_std: deviation(p_0) };
    }
  }
};

function compare({ p_0, p_std }: { readonly p_0: SI; readonly p_std: SI }, trace: Trace): void {
  const deviation = p_0 / p_std - 1;
  if (Math.abs(deviation) <= WEATHER) return;
  trace.note({
    about: "p_0",
    says: "The barometer and the elevation disagree by more than weather explains. Check the elevation, and whether the reading was corrected to sea level. At this elevation weather seldom moves the barometer past the bound.",
    limit: { value: p_std * (1 + Math.sign(deviation) * WEATHER), kind: "pressure" },
  });
}
