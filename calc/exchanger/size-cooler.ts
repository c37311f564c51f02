import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import { AIR_TEMPERATURE, type AirGiven, noteDew, rateOfAir } from "./air-side.ts";
import { arrangementOf } from "./arrangements.ts";
import { capacityRatio } from "./capacity-ratio.ts";
import { conductance } from "./conductance.ts";
import { meanOfWater } from "./coolant.ts";
import { dutyOfRate } from "./duty-of-rate.ts";
import { type MeanDifference, meanDifferenceOf } from "./mean-difference.ts";
import { acceptInlets, type Inlets, settleOutlets } from "./outlets.ts";
import { reach } from "./reach.ts";
import { onSmallerStream, type SmallerStream } from "./smaller-stream.ts";
import { temperatureEffectiveness } from "./temperature-effectiveness.ts";
import { reachWithinSize, transferUnitsNeeded } from "./transfer-units-needed.ts";
import { waterOutletTemperature } from "./water-outlet-temperature.ts";
import {
  marginToBoiling,
  rateOfWater,
  refuseFlow,
  refuseScarceWater,
  type WaterGiven,
} from "./water-side.ts";

/** The wanted air outlet in K, the arrangement's id, and both streams at their inlets. */
export interface SizeCoolerGiven extends AirGiven, WaterGiven {
  readonly arrangement: string;
  readonly T_3?: SI | undefined;
}

/** K, W, W/K. `T_3_best` is the outlet nearest to the water that any size of this arrangement makes with these flows. */
export interface SizedCooler extends SmallerStream, MeanDifference {
  readonly UA: SI;
  readonly NTU: SI;
  readonly P: SI;
  readonly R: SI;
  readonly Q: SI;
  readonly T_w_out: SI;
  readonly C_a: SI;
  readonly C_w: SI;
  readonly P_most: SI;
  readonly T_3_best: SI;
  readonly Delta_T_sat: SI | undefined;
}

/** Nearer to the best outlet than this, in K, the size grows beyond all bounds. */
const AT_BEST = 1e-6;
const SETTLED = 1e-10;
const ROUNDS = 100;

/**
 * The heat conductance that brings the air to a wanted outlet, or why no size does.
 *
 * Throws a DomainError that names T_3 where the outlet is colder than the water or than any size of the arrangement can
 * make it, and the water flow where it would have to leave hotter than the air enters; each with its bound.
 *
 * @example
 * sizeCooler({ arrangement: "counter-cross-2", T_3: 331.93, m_a: 0.35, T_2: 458.15,
 *   coolant: "water", m_w: 0.9, T_w_in: 295.15 }).UA // 559 W/K
 */
export const sizeCooler: Model<SizeCoolerGiven, SizedCooler> = (given, trace = plain) => {
  const arrangement = arrangementOf(given.arrangement);
  const inlets = acceptInlets(given, trace);
  const { air, coolant, m_w, T_w_in } = inlets;
  const T_3 = acceptOutlet(given.T_3, air.T_2, T_w_in);

  const C_a = rateOfAir(air, T_3, trace);
  const Q = trace.use(dutyOfRate, { C: C_a, T_in: air.T_2, T_out: T_3 }, "cooler");
  const T_w_out = settleWater(given, inlets, Q);
  const C_w = rateOfWater(coolant, m_w, { T_w_in, T_w_out }, trace);
  const R = trace.use(capacityRatio, { C_a, C_w }, "cooler");
  refuseScarceWater(given, m_w, R);
  const P = trace.use(temperatureEffectiveness, { T_in: air.T_2, T_out: T_3, T_w_in }, "wanted");

  const best = settleOutlets(inlets, (_, ratio) => reachWithinSize(arrangement, ratio).P).T_3;
  refuse(
    Math.abs(T_3 - T_w_in) < Math.abs(best - T_w_in) + AT_BEST || P >= reachWithinSize(arrangement, R).P,
    "T_3",
    `No size of this arrangement reaches that with these flows. The largest, or its best one, ends at the bound. More water, ${
      air.T_2 > T_w_in ? "colder" : "hotter"
    } water or another arrangement goes further.`,
    { value: best, kind: "temperature" },
  );
  const NTU = transferUnitsNeeded(arrangement, { P, R });
  trace.use(arrangement.effectiveness, { NTU, R }, `${arrangement.name}, the NTU found put back`);
  const UA = trace.use(conductance, { NTU, C_a }, "cooler");
  trace.use(waterOutletTemperature, { T_w_in, R, P, T_in: air.T_2 }, "cooler");
  noteDew(air, { T_3, T_w_in }, trace);
  return {
    UA,
    NTU,
    P,
    R,
    Q,
    T_w_out,
    C_a,
    C_w,
    ...onSmallerStream({ P, R, NTU }, trace),
    ...meanDifferenceOf({ T_2: air.T_2, T_3, T_w_in, T_w_out, P, R, NTU }, trace),
    P_most: reach(arrangement, R).P,
    T_3_best: best,
    Delta_T_sat: marginToBoiling(coolant, { T_w_in, T_w_out }, trace),
  };
};

/** The wanted outlet, which lies between the air before the cooler and the water. */
function acceptOutlet(wanted: SI | undefined, T_2: SI, T_w_in: SI): SI {
  const T_3 = accept("T_3", "The wanted temperature after the cooler", wanted, AIR_TEMPERATURE);
  const cools = T_2 > T_w_in;
  refuse(
    cools ? T_3 <= T_w_in : T_3 >= T_w_in,
    "T_3",
    cools
      ? "The wanted outlet is at or below the water temperature at the inlet, and no cooler goes below its water. It has to be above the bound."
      : "The wanted outlet is at or above the temperature of the warmer water. It has to be below the bound.",
    { value: T_w_in, kind: "temperature" },
  );
  refuse(
    cools ? T_3 >= T_2 : T_3 <= T_2,
    "T_3",
    cools
      ? "The wanted outlet is not colder than the air before the cooler. It has to be below the bound."
      : "The wanted outlet is not warmer than the air before the cooler, which the water warms. It has to be above the bound.",
    { value: T_2, kind: "temperature" },
  );
  return T_3;
}

/** Where the water leaves that takes up Q in W; refuses a flow so small that it would leave beyond the entering air. */
function settleWater(given: WaterGiven, { air, coolant, m_w, T_w_in }: Inlets, Q: SI): SI {
  const most = rateOfWater(coolant, m_w, { T_w_in, T_w_out: air.T_2 }, plain) * (air.T_2 - T_w_in);
  if (most / Q <= 1)
    refuseFlow(
      given,
      m_w,
      Q / most,
      "With so little water it would have to leave at or beyond the temperature at which the air enters. It has to be above the bound.",
    );
  let T_w_out = T_w_in + ((air.T_2 - T_w_in) * Q) / most;
  for (let i = 0; i < ROUNDS; i++) {
    const next = T_w_in + Q / (m_w * meanOfWater(coolant, T_w_in, T_w_out, plain));
    const moved = Math.abs(next - T_w_out);
    T_w_out = next;
    if (moved < SETTLED) return T_w_out;
  }
  throw new Error(`the water outlet did not settle in ${ROUNDS} rounds`);
}
