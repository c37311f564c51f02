import { volumeFlow } from "../fluids/volume-flow.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { AIR_TEMPERATURE, type AirGiven, acceptAir, noteDew, rateOfAir } from "./air-side.ts";
import { acceptCoolant, type Coolant, densityOf, meanOfWater } from "./coolant.ts";
import { dutyOfRate } from "./duty-of-rate.ts";
import { flowForDuty } from "./flow-for-duty.ts";
import { acceptWaterInlet, acceptWaterOutlet, marginToBoiling, type WaterGiven } from "./water-side.ts";

/**
 * The duty in W itself, or the air in kg/s and K that has to be cooled from T_2 to T_3; and how far the water may warm, as a
 * rise in K or as an outlet temperature in K.
 */
export interface WaterForDutyGiven extends AirGiven, Omit<WaterGiven, "flow" | "m_w" | "V_w"> {
  readonly duty: "stated" | "air";
  readonly Q?: SI | undefined;
  readonly T_3?: SI | undefined;
  readonly bound: "rise" | "outlet";
  readonly Delta_T_w?: SI | undefined;
  readonly T_w_out?: SI | undefined;
}

/** kg/s, m³/s at the inlet (where the density is known), K, W. */
export interface WaterForDuty {
  readonly m_w: SI;
  readonly V_w: SI | undefined;
  readonly T_w_out: SI;
  readonly Delta_T_w: SI;
  readonly Q: SI;
  readonly Delta_T_sat: SI | undefined;
}

/**
 * The water flow that takes up a duty with a given rise.
 *
 * Throws a DomainError for a rise that is none and for water that would leave hotter than the air enters.
 *
 * @example
 * waterForDuty({ duty: "stated", Q: 44796, coolant: "water", T_w_in: 295.15, bound: "rise", Delta_T_w: 10 }).m_w // 1.071 kg/s
 */
export const waterForDuty: Model<WaterForDutyGiven, WaterForDuty> = (given, trace = plain) => {
  const coolant = acceptCoolant(given, trace);
  const T_w_in = acceptWaterInlet(given, coolant);
  const T_w_out = outletOf(given, coolant, T_w_in);
  const Q = dutyOf(given, { T_w_in, T_w_out }, trace);
  const Delta_T_w = T_w_out - T_w_in;
  const c_m = meanOfWater(coolant, T_w_in, T_w_out, trace);
  const m_w = trace.use(flowForDuty, { Q, c_m, Delta_T: Delta_T_w }, "water");
  const rho = densityOf(given, coolant, T_w_in, trace);
  return {
    m_w,
    V_w: rho === undefined ? undefined : trace.use(volumeFlow, { m: m_w, rho }, "water, at the inlet"),
    T_w_out,
    Delta_T_w,
    Q,
    Delta_T_sat: marginToBoiling(coolant, { T_w_in, T_w_out }, trace),
  };
};

function outletOf(given: WaterForDutyGiven, coolant: Coolant, T_w_in: SI): SI {
  if (given.bound === "rise") {
    const rise = accept("Delta_T_w", "The rise of the water", given.Delta_T_w, {
      kind: "temperatureDifference",
      above: 0,
      atMost: 200,
    });
    return T_w_in + rise;
  }
  const T_w_out = acceptWaterOutlet(given.T_w_out, coolant);
  refuse(
    T_w_out <= T_w_in,
    "T_w_out",
    "Water that takes up heat leaves warmer than it enters. It has to be above the bound.",
    { value: T_w_in, kind: "temperature" },
  );
  return T_w_out;
}

function dutyOf(
  given: WaterForDutyGiven,
  { T_w_in, T_w_out }: { readonly T_w_in: SI; readonly T_w_out: SI },
  trace: Trace,
): SI {
  if (given.duty === "stated")
    return accept("Q", "The duty", given.Q, { kind: "heatFlow", above: 0, atMost: 1e9 });
  const air = acceptAir(given);
  refuse(
    T_w_in >= air.T_2,
    "T_w_in",
    "The water enters no colder than the air, so it cannot cool it. It has to be below the bound.",
    { value: air.T_2, kind: "temperature" },
  );
  const T_3 = accept("T_3", "The air temperature after the cooler", given.T_3, AIR_TEMPERATURE);
  refuse(
    T_3 >= air.T_2,
    "T_3",
    "The air after the cooler is not colder than before it. It has to be below the bound.",
    { value: air.T_2, kind: "temperature" },
  );
  refuse(
    T_3 <= T_w_in,
    "T_3",
    "The air after the cooler is not warmer than the water that enters, and no cooler goes below its water. It has to be above the bound.",
    { value: T_w_in, kind: "temperature" },
  );
  refuse(
    T_w_out >= air.T_2,
    given.bound === "rise" ? "Delta_T_w" : "T_w_out",
    "The water would leave at or beyond the temperature at which the air enters. It has to be below the bound.",
    given.bound === "rise"
      ? { value: air.T_2 - T_w_in, kind: "temperatureDifference" }
      : { value: air.T_2, kind: "temperature" },
  );
  if (T_w_out > T_3)
    trace.note({
      about: "T_w_out",
      says: "The water leaves hotter than the air does. Passes against the air can do that, and one large pass across; with swapped hoses hardly any cooler can. The air leaves at the bound.",
      limit: { value: T_3, kind: "temperature" },
    });
  noteDew(air, { T_3, T_w_in }, trace);
  const C_a = rateOfAir(air, T_3, trace);
  return trace.use(dutyOfRate, { C: C_a, T_in: air.T_2, T_out: T_3 }, "cooler");
}
