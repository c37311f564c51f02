import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { AIR_TEMPERATURE, type AirGiven, acceptAirState, meanOfAir, noteDew } from "./air-side.ts";
import type { Arrangement } from "./arrangement.ts";
import { arrangementOf } from "./arrangements.ts";
import { capacityRate } from "./capacity-rate.ts";
import { capacityRatio } from "./capacity-ratio.ts";
import { conductance } from "./conductance.ts";
import { acceptCoolant, type Coolant, meanOfWater } from "./coolant.ts";
import { dutyOfRate } from "./duty-of-rate.ts";
import { flowForDuty } from "./flow-for-duty.ts";
import { heatBalance } from "./heat-balance.ts";
import { type MeanDifference, meanDifferenceOf } from "./mean-difference.ts";
import { reach } from "./reach.ts";
import { onSmallerStream, ratiosOnSmaller, type SmallerRatios } from "./smaller-stream.ts";
import { temperatureChange } from "./temperature-change.ts";
import { temperatureEffectiveness } from "./temperature-effectiveness.ts";
import { reachWithinSize, transferUnitsNeeded } from "./transfer-units-needed.ts";
import {
  acceptWaterInlet,
  acceptWaterOutlet,
  flowOf,
  LARGEST_RATIO,
  marginToBoiling,
  refuseScarceWater,
  type WaterGiven,
} from "./water-side.ts";

/** Four temperatures in K, and the flows that were measured: both, that of the air, or that of the water. */
export interface ReadingsGiven extends AirGiven, WaterGiven {
  readonly arrangement: string;
  readonly flows: "both" | "air" | "water";
  readonly T_3?: SI | undefined;
  readonly T_w_out?: SI | undefined;
}

/**
 * Effectiveness in each form, heat on both sides in W, and what they say of the cooler. A flow that was not measured follows
 * from the heat balance; one that was is given back. `NTU` and `UA` are missing where the arrangement cannot reach P.
 */
export interface ReadCooler extends SmallerRatios, MeanDifference {
  readonly NTU_min?: SI;
  readonly P: SI;
  readonly R: SI;
  readonly Q_a: SI;
  readonly Q_w: SI | undefined;
  readonly delta_Q: SI | undefined;
  readonly m_a: SI;
  readonly m_w: SI;
  readonly NTU: SI | undefined;
  readonly UA: SI | undefined;
  readonly P_most: SI;
  readonly Delta_T_sat: SI | undefined;
}

/** Common practice, no source: a heat balance that closes this well is acceptable. */
const ACCEPTABLE = 0.05;

/**
 * What readings say of a cooler: effectiveness, heat on both sides and how well they agree, transfer units and conductance.
 *
 * Throws a DomainError for temperatures that cannot be: air that leaves colder than the water enters, or not colder than it
 * came; water that leaves not warmer than it came, or hotter than the air that enters. Where P is above the most that the
 * arrangement reaches, a note says so and NTU and UA are missing.
 *
 * @example
 * coolerFromReadings({ arrangement: "counter-cross-2", flows: "both", m_a: 0.35, T_2: 458.15, T_3: 331.93,
 *   coolant: "water", m_w: 0.9, T_w_in: 295.15, T_w_out: 307.06 }).UA // 559 W/K
 */
export const coolerFromReadings: Model<ReadingsGiven, ReadCooler> = (given, trace = plain) => {
  const arrangement = arrangementOf(given.arrangement);
  const air = acceptAirState(given);
  const coolant = acceptCoolant(given, trace);
  const T_w_in = acceptWaterInlet(given, coolant);
  const { T_3, T_w_out } = acceptOutlets(given, coolant, air.T_2, T_w_in);
  const { T_2 } = air;

  const P = trace.use(temperatureEffectiveness, { T_in: T_2, T_out: T_3, T_w_in }, "cooler");
  const c_a = meanOfAir(air, T_3, trace);
  const c_w = meanOfWater(coolant, T_w_in, T_w_out, trace);
  const sides = sidesOf(given, { c_a, c_w, T_2, T_3, T_w_in, T_w_out }, coolant, trace);
  const { C_a, R, Q_a, Q_w } = sides;
  if (given.flows === "air")
    refuse(
      R > LARGEST_RATIO,
      "T_3",
      "The air changes so little against the water that nothing can be said of the cooler. It has to be below the bound.",
      { value: T_2 - (T_w_out - T_w_in) / LARGEST_RATIO, kind: "temperature" },
    );
  else refuseScarceWater(given, sides.m_w, R);
  noteDew(air, { T_3, T_w_in }, trace);

  const delta_Q = Q_w === undefined ? undefined : trace.use(heatBalance, { Q_a, Q_w }, "cooler");
  if (delta_Q !== undefined && Math.abs(delta_Q) > ACCEPTABLE)
    trace.note({
      about: "delta_Q",
      says: "The two sides differ by more than the bound, so a flow or a temperature is wrong, or water condenses, or the cooler was not settled. Common practice, no source.",
      limit: { value: ACCEPTABLE, kind: "fraction" },
    });

  const P_most = reach(arrangement, R).P;
  const P_built = reachWithinSize(arrangement, R).P;
  const found = P < P_built ? sizeFrom(arrangement, { P, R, C_a }, trace) : undefined;
  if (!found)
    trace.note({
      about: "P",
      says:
        P < P_most
          ? "The readings are so near to the most that this arrangement can do that no cooler is large enough for them. A reading or a flow is wrong. What is out of reach begins at the bound."
          : "The readings give more than this arrangement can reach at this ratio of the heat-capacity rates, however large it is. A reading, a flow or the arrangement is not what was given; hoses given as swapped may be the right way round. The most is the bound.",
      limit: { value: P_built, kind: "fraction" },
    });
  return {
    P,
    R,
    Q_a,
    Q_w,
    delta_Q,
    m_a: sides.m_a,
    m_w: sides.m_w,
    NTU: found?.NTU,
    UA: found?.UA,
    P_most,
    Delta_T_sat: marginToBoiling(coolant, { T_w_in, T_w_out }, trace),
    ...(found ? onSmallerStream({ P, R, NTU: found.NTU }, trace) : ratiosOnSmaller({ P, R }, trace)),
    ...meanDifferenceOf({ T_2, T_3, T_w_in, T_w_out, P, R, NTU: found?.NTU }, trace),
  };
};

function acceptOutlets(given: ReadingsGiven, coolant: Coolant, T_2: SI, T_w_in: SI) {
  refuse(
    T_w_in >= T_2,
    "T_w_in",
    "The water enters no colder than the air, so it cannot cool it. It has to be below the bound.",
    { value: T_2, kind: "temperature" },
  );
  const T_3 = accept("T_3", "The air temperature after the cooler", given.T_3, AIR_TEMPERATURE);
  const T_w_out = acceptWaterOutlet(given.T_w_out, coolant);
  const temperature = (value: SI) => ({ value, kind: "temperature" as const });
  refuse(
    T_3 >= T_2,
    "T_3",
    "The air leaves no colder than it enters, so nothing was cooled. It has to be below the bound.",
    temperature(T_2),
  );
  refuse(
    T_3 <= T_w_in,
    "T_3",
    "The air leaves no warmer than the water enters, and no cooler goes below its water. A probe is wrong, or the two were swapped. It has to be above the bound.",
    temperature(T_w_in),
  );
  refuse(
    T_w_out <= T_w_in,
    "T_w_out",
    "The water leaves no warmer than it enters, so it took up nothing. It has to be above the bound.",
    temperature(T_w_in),
  );
  refuse(
    T_w_out >= T_2,
    "T_w_out",
    "The water leaves no colder than the air enters, and no cooler warms its water beyond the air. It has to be below the bound.",
    temperature(T_2),
  );
  return { T_3, T_w_out };
}

interface Measured {
  readonly c_a: SI;
  readonly c_w: SI;
  readonly T_2: SI;
  readonly T_3: SI;
  readonly T_w_in: SI;
  readonly T_w_out: SI;
}

interface Sides {
  readonly m_a: SI;
  readonly m_w: SI;
  readonly C_a: SI;
  readonly R: SI;
  readonly Q_a: SI;
  readonly Q_w: SI | undefined;
}

/** Both sides from the flows that were measured; one that was not follows from the heat that the other carries. */
function sidesOf(given: ReadingsGiven, at: Measured, coolant: Coolant, trace: Trace): Sides {
  const airFlow = () =>
    accept("m_a", "The air flow", given.m_a, { kind: "massFlow", above: 0, atMost: 1000 });
  const waterFlow = () => flowOf(given, coolant, at.T_w_in, trace);
  const ofAir = (m: SI) => trace.use(capacityRate, { m, c_m: at.c_a }, "air");
  const ofWater = (m: SI) => trace.use(capacityRate, { m, c_m: at.c_w }, "water");
  const fromAir = (C: SI) => trace.use(dutyOfRate, { C, T_in: at.T_2, T_out: at.T_3 }, "air");
  // The water takes up what it would give off on its way back.
  const intoWater = (C: SI) =>
    trace.use(
      dutyOfRate,
      { C, T_in: at.T_w_out, T_out: at.T_w_in },
      "water, from its outlet back to its inlet",
    );
  if (given.flows === "both") {
    const m_a = airFlow();
    const m_w = waterFlow();
    const C_a = ofAir(m_a);
    const C_w = ofWater(m_w);
    const R = trace.use(capacityRatio, { C_a, C_w }, "cooler");
    return { m_a, m_w, C_a, R, Q_a: fromAir(C_a), Q_w: intoWater(C_w) };
  }
  const fall = trace.use(temperatureChange, { T_in: at.T_2, T_out: at.T_3 }, "air");
  const rise = trace.use(temperatureChange, { T_in: at.T_w_in, T_out: at.T_w_out }, "water");
  if (given.flows === "air") {
    const m_a = airFlow();
    const C_a = ofAir(m_a);
    const Q = fromAir(C_a);
    const m_w = trace.use(flowForDuty, { Q, c_m: at.c_w, Delta_T: rise }, "water");
    const R = trace.use(capacityRatio, { C_a, C_w: ofWater(m_w) }, "cooler");
    return { m_a, m_w, C_a, R, Q_a: Q, Q_w: undefined };
  }
  const m_w = waterFlow();
  const C_w = ofWater(m_w);
  const Q = intoWater(C_w);
  const m_a = trace.use(flowForDuty, { Q, c_m: at.c_a, Delta_T: fall }, "air");
  const C_a = ofAir(m_a);
  return { m_a, m_w, C_a, R: trace.use(capacityRatio, { C_a, C_w }, "cooler"), Q_a: Q, Q_w: undefined };
}

function sizeFrom(
  arrangement: Arrangement,
  { P, R, C_a }: { readonly P: SI; readonly R: SI; readonly C_a: SI },
  trace: Trace,
): { readonly NTU: SI; readonly UA: SI } {
  const NTU = transferUnitsNeeded(arrangement, { P, R });
  trace.use(arrangement.effectiveness, { NTU, R }, `${arrangement.name}, the NTU found put back`);
  return { NTU, UA: trace.use(conductance, { NTU, C_a }, "cooler") };
}
