import { dewPointAtPressure } from "../fluids/dew-point-at-pressure.ts";
import { enthalpy } from "../fluids/enthalpy.ts";
import { vapourPressureFromHumidityRatio } from "../fluids/vapour-pressure-from-humidity-ratio.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { capacityRate } from "./capacity-rate.ts";
import { meanHeatCapacity } from "./mean-heat-capacity.ts";

/** The charge that enters a cooler: kg/s, K, kg/kg (dry unless given), and Pa absolute for its dew point. */
export interface AirGiven {
  readonly m_a?: SI | undefined;
  readonly T_2?: SI | undefined;
  readonly w?: SI | undefined;
  readonly p_2?: SI | undefined;
}

export interface Air {
  readonly m_a: SI;
  readonly T_2: SI;
  readonly w: SI;
  readonly p_2: SI | undefined;
}

export const AIR_TEMPERATURE = { kind: "temperature", atLeast: 223.15, atMost: 800 } as const;

/** Checks temperature and humidity of the air; throws a DomainError that names T_2, w or p_2. */
export function acceptAirState(given: AirGiven): Omit<Air, "m_a"> {
  return {
    T_2: accept("T_2", "The air temperature before the cooler", given.T_2, AIR_TEMPERATURE),
    w: accept("w", "The humidity ratio", given.w ?? 0, { kind: "humidityRatio", atLeast: 0, atMost: 1 }),
    p_2:
      given.p_2 === undefined
        ? undefined
        : accept("p_2", "The pressure of the charge, absolute,", given.p_2, {
            kind: "pressure",
            above: 0,
            atMost: 5e6,
          }),
  };
}

/** Checks the whole; names m_a too. */
export const acceptAir = (given: AirGiven): Air => ({
  ...acceptAirState(given),
  m_a: accept("m_a", "The air flow", given.m_a, { kind: "massFlow", above: 0, atMost: 1000 }),
});

/** Heat in J/kg that a kilogram of the air gives off on its way to T_3, which the mean heat capacity carries. */
export function meanOfAir(air: Pick<Air, "T_2" | "w">, T_3: SI, trace: Trace): SI {
  const { T_2, w } = air;
  const h_in = trace.use(enthalpy, { T: T_2, w }, "air, before the cooler");
  const h_out = trace.use(enthalpy, { T: T_3, w }, "air, after the cooler");
  return trace.use(meanHeatCapacity, { h_in, h_out, T_in: T_2, T_out: T_3 }, "air");
}

/** W/K, between T_2 and T_3. */
export const rateOfAir = (air: Air, T_3: SI, trace: Trace): SI =>
  trace.use(capacityRate, { m: air.m_a, c_m: meanOfAir(air, T_3, trace) }, "air");

/**
 * A note where the air leaves below its dew point, or where the water does while the air on average does not: the heat of
 * condensing is not in the formulas of dry exchangers.
 */
export function noteDew(
  air: Pick<Air, "w" | "p_2">,
  { T_3, T_w_in }: { readonly T_3: SI; readonly T_w_in: SI },
  trace: Trace,
): void {
  if (air.p_2 === undefined || air.w === 0) return;
  const p_v = vapourPressureFromHumidityRatio.compute({ p: air.p_2, w: air.w });
  const dewPoint = dewPointAtPressure({ p_v, p: air.p_2 }, plain, "charge");
  if (dewPoint === undefined || Math.min(T_3, T_w_in) >= dewPoint) return;
  const limit = { value: dewPoint, kind: "temperature" } as const;
  if (T_3 >= dewPoint) {
    trace.note({
      about: "T_3",
      says: "On average the air leaves above its dew point at this pressure, and the water enters below it. Walls near the cold water may be wet all the same. The dew point is the bound.",
      limit,
    });
    return;
  }
  trace.note({
    about: "T_3",
    says: "The air leaves below its dew point at this pressure, so water condenses in the cooler. Its heat is not counted here: the air leaves warmer and the water takes up more than is shown. Fit a drain.",
    limit,
  });
}
