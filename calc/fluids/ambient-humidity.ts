import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { enhancementFactor } from "./enhancement-factor.ts";
import { humidityRatio } from "./humidity-ratio.ts";
import { humidityRatioFromWetBulb } from "./humidity-ratio-from-wet-bulb.ts";
import { saturatedHumidityRatio } from "./saturated-humidity-ratio.ts";
import { saturationPressure } from "./saturation-pressure.ts";
import { vapourPressure } from "./vapour-pressure.ts";
import { vapourPressureFromHumidityRatio } from "./vapour-pressure-from-humidity-ratio.ts";
import { wetBulb } from "./wet-bulb.ts";
import { wickLatentHeat } from "./wick-latent-heat.ts";

/** How the humidity of the ambient air is given. */
export type Humidity = "dry" | "relative" | "dew-point" | "wet-bulb";

/** Ambient air: Pa absolute, K, relative humidity 0 to 1. Only the reading that `humidity` names is looked at. */
export interface AmbientGiven {
  readonly p_0: SI;
  readonly T_0: SI;
  readonly humidity: Humidity;
  readonly varphi_0?: SI | undefined;
  readonly T_dp_0?: SI | undefined;
  readonly T_wb_0?: SI | undefined;
}

const WHERE = "ambient air";
const COLDEST = 173.15;
const HOTTEST = 373.15;

/**
 * Vapour pressure in Pa and humidity ratio in kg/kg of the ambient air, from whichever reading is given.
 *
 * Barometer 10 to 200 kPa, temperature -100 to 100 °C. Throws a DomainError for what cannot be: relative humidity above
 * 1, a dew point or wet bulb above the dry bulb, a wet bulb lower than dry air can make it.
 */
export function ambientHumidity(given: AmbientGiven, trace: Trace): { readonly p_v: SI; readonly w: SI } {
  const p = accept("p_0", "The barometer, as an absolute pressure,", given.p_0, {
    kind: "pressure",
    atLeast: 10e3,
    atMost: 200e3,
  });
  const T = accept("T_0", "The ambient temperature", given.T_0, {
    kind: "temperature",
    atLeast: COLDEST,
    atMost: HOTTEST,
  });

  switch (given.humidity) {
    case "dry":
      return { p_v: 0, w: 0 };
    case "relative": {
      const varphi = relative(given.varphi_0);
      const p_v = saturated({ T, p, varphi }, trace, WHERE);
      refuse(
        p_v >= p,
        "varphi_0",
        "Air this hot at this barometer cannot have that relative humidity: the vapour alone would reach the barometer. A lower relative humidity is accepted.",
      );
      return { p_v, w: trace.use(humidityRatio, { p_v, p }, WHERE) };
    }
    case "dew-point": {
      const T_dp = accept("T_dp_0", "The dew point", given.T_dp_0, { kind: "temperature", atLeast: COLDEST });
      refuse(
        T_dp > T,
        "T_dp_0",
        "The dew point is above the dry bulb. It has to be at or below the ambient temperature.",
        { value: T, kind: "temperature" },
      );
      const p_v = saturated({ T: T_dp, p, varphi: 1 }, trace, "ambient air at its dew point");
      refuse(
        p_v >= p,
        "T_dp_0",
        "At this dew point the vapour alone would reach the barometer. A lower dew point is accepted.",
      );
      return { p_v, w: trace.use(humidityRatio, { p_v, p }, WHERE) };
    }
    case "wet-bulb": {
      const w = fromWetBulb({ T, p, T_wb: given.T_wb_0 }, trace);
      return { p_v: trace.use(vapourPressureFromHumidityRatio, { w, p }, WHERE), w };
    }
  }
}

function relative(value: SI | undefined): SI {
  const varphi = accept("varphi_0", "The relative humidity", value, { kind: "fraction", atLeast: 0 });
  refuse(
    varphi > 1,
    "varphi_0",
    "The relative humidity is above that of saturated air. Air cannot keep more vapour than that. It may be as high as the bound.",
    { value: 1, kind: "fraction" },
  );
  return varphi;
}

function saturated(
  state: { readonly T: SI; readonly p: SI; readonly varphi: SI },
  trace: Trace,
  where: string,
): SI {
  const { T, p, varphi } = state;
  const p_ws = trace.use(saturationPressure, { T }, where);
  const f_e = trace.use(enhancementFactor, { T, p }, where);
  return trace.use(vapourPressure, { varphi, f_e, p_ws }, where);
}

function fromWetBulb(
  given: { readonly T: SI; readonly p: SI; readonly T_wb: SI | undefined },
  trace: Trace,
): SI {
  const { T, p } = given;
  const where = "air at the wet bulb";
  const T_wb = accept("T_wb_0", "The wet bulb", given.T_wb, { kind: "temperature", atLeast: COLDEST });
  refuse(
    T_wb > T,
    "T_wb_0",
    "The wet bulb is above the dry bulb. It has to be at or below the ambient temperature.",
    { value: T, kind: "temperature" },
  );
  const p_ws = trace.use(saturationPressure, { T: T_wb }, where);
  const f_e = trace.use(enhancementFactor, { T: T_wb, p }, where);
  refuse(
    f_e * p_ws >= p,
    "T_wb_0",
    "Water would boil at this wet bulb and barometer. A lower wet bulb is accepted.",
  );
  const w_s = trace.use(saturatedHumidityRatio, { f_e, p_ws, p }, where);
  const L_wb = trace.use(wickLatentHeat, { T_wb }, where);
  const w = trace.use(humidityRatioFromWetBulb, { T, T_wb, L_wb, w_s }, WHERE);
  if (w < 0) {
    const driest = wetBulb.compute({ T, p, w: 0 });
    refuse(
      true,
      "T_wb_0",
      "The wet bulb is lower than even dry air would make it. It has to be at or above the bound.",
      { value: driest, kind: "temperature" },
    );
  }
  return w;
}
