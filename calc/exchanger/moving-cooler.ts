import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { type Air, type AirGiven, acceptAir, noteDew, rateOfAir } from "./air-side.ts";
import type { Arrangement } from "./arrangement.ts";
import { arrangementOf } from "./arrangements.ts";
import { acceptCoolant, type Coolant, type CoolantGiven } from "./coolant.ts";
import { filmProperties } from "./coolant-film.ts";
import { coolerOutletTemperature } from "./cooler-outlet-temperature.ts";
import { dutyOfRate } from "./duty-of-rate.ts";
import { hotWallTemperature } from "./hot-wall-temperature.ts";
import {
  acceptMoving,
  type Conductances,
  conductanceAt,
  type MovingConductance,
  type MovingGiven,
} from "./moving-conductance.ts";
import { type Outlets, oneRound } from "./outlets.ts";
import { transferUnits } from "./transfer-units.ts";
import {
  acceptWaterInlet,
  flowOf,
  marginToBoiling,
  refuseScarceWater,
  type WaterGiven,
} from "./water-side.ts";

/** A cooler whose conductance moves with the flows, by its arrangement's id, and the air that enters it. */
export interface MovingCoolerGiven extends AirGiven, CoolantGiven, MovingGiven {
  readonly arrangement: string;
}

/** The same, checked. */
export interface MovingCooler {
  readonly arrangement: Arrangement;
  readonly air: Air;
  readonly coolant: Coolant;
  readonly moving: MovingConductance;
  readonly film: (T: SI) => (trace: Trace) => ReturnType<typeof filmProperties>;
}

/** Water as it enters: kg/s, K. */
export interface WaterInlet {
  readonly m_w: SI;
  readonly T_w_in: SI;
}

/** K, W, W/K, and where the passages are known the Reynolds number and the speed in m/s. */
export interface MovingState extends Outlets, Conductances {
  readonly NTU: SI;
  readonly Q: SI;
  readonly T_wall: SI;
}

const SETTLED = 1e-8;
const ROUNDS = 100;

/** Checks cooler, air and coolant; throws a DomainError that names the field. */
export function acceptMovingCooler(given: MovingCoolerGiven, trace: Trace): MovingCooler {
  const coolant = acceptCoolant(given, trace);
  return {
    arrangement: arrangementOf(given.arrangement),
    air: acceptAir(given),
    coolant,
    moving: acceptMoving(given, trace),
    film: (T) => (through) => filmProperties(given, coolant, T, through),
  };
}

type Assumed = Pick<Outlets, "T_3" | "T_w_out">;
type Round = Outlets & Conductances & { readonly NTU: SI };

function round(cooler: MovingCooler, { m_w, T_w_in }: WaterInlet, assumed: Assumed, trace: Trace): Round {
  const { arrangement, air, coolant, moving, film } = cooler;
  const properties = film((T_w_in + assumed.T_w_out) / 2);
  const parts = conductanceAt(moving, { m_a: air.m_a, m_w }, properties, trace);
  let NTU = 0;
  const effectiveness = (C_a: SI, R: SI) => {
    NTU = trace.use(transferUnits, { UA: parts.UA, C_a }, "cooler");
    return trace.use(arrangement.effectiveness, { NTU, R }, arrangement.name);
  };
  const outlets = oneRound({ air, coolant, m_w, T_w_in }, assumed, effectiveness, trace);
  return { ...parts, ...outlets, NTU };
}

/**
 * Both outlets at which heat capacities and the film of the water, all at mean temperatures, agree with the outlets that they
 * lead to. `start` is where to begin.
 */
export function settleMoving(cooler: MovingCooler, water: WaterInlet, start?: Assumed): Round {
  const span = cooler.air.T_2 - water.T_w_in;
  let assumed = start ?? { T_3: cooler.air.T_2 - span / 2, T_w_out: water.T_w_in + span / 20 };
  let before = Infinity;
  let part = 1;
  for (let i = 0; i < ROUNDS; i++) {
    const found = round(cooler, water, assumed, plain);
    const [dT_3, dT_w] = [found.T_3 - assumed.T_3, found.T_w_out - assumed.T_w_out];
    const moved = Math.max(Math.abs(dT_3), Math.abs(dT_w));
    if (moved < SETTLED) return found;
    // Where the film answers steeply to its temperature, whole steps would swing about.
    if (moved > 0.7 * before) part = Math.max(part / 2, 1 / 16);
    before = moved;
    assumed = { T_3: assumed.T_3 + part * dT_3, T_w_out: assumed.T_w_out + part * dT_w };
  }
  return between(cooler, water);
}

/** The part of the way from the water's inlet to the air's that the search below leaves out at its start. */
const BESIDE = 1e-4;
const AIR_ROUNDS = 30;

/** The same where rounds swing about for ever: in fine passages a little warmth may make a flow turbulent, and that cool it again. */
function between(cooler: MovingCooler, water: WaterInlet): Round {
  const { T_2 } = cooler.air;
  const { T_w_in } = water;
  const at = (T_w_out: SI): Round => {
    let T_3 = (T_2 + T_w_in) / 2;
    let found = round(cooler, water, { T_3, T_w_out }, plain);
    for (let i = 0; i < AIR_ROUNDS && Math.abs(found.T_3 - T_3) > SETTLED; i++) {
      T_3 = found.T_3;
      found = round(cooler, water, { T_3, T_w_out }, plain);
    }
    return found;
  };
  const least = T_w_in + BESIDE * (T_2 - T_w_in);
  const T_w_out = bracketedRoot((T) => at(T).T_w_out - T, least, T_2, { tolerance: SETTLED });
  // What the next round leads to may be far from here, where the film is that steep.
  return { ...at(T_w_out), T_w_out };
}

/** The settled state, through `trace`. */
export function movingState(cooler: MovingCooler, water: WaterInlet, trace: Trace): MovingState {
  const { air } = cooler;
  const last = round(cooler, water, settleMoving(cooler, water), trace);
  const { UA_a, UA_film, T_3, T_w_out, C_a } = last;
  return {
    ...last,
    Q: trace.use(dutyOfRate, { C: C_a, T_in: air.T_2, T_out: T_3 }, "cooler"),
    T_wall: trace.use(hotWallTemperature, { UA_a, T_in: air.T_2, UA_film, T_w_out }, "hot end"),
  };
}

/** Where the air would leave, K, if the water were endless: no warmer at its outlet, and without a resistance of its own. */
export function outletOfEndlessWater({ arrangement, air, moving, film }: MovingCooler, T_w_in: SI): SI {
  const { UA } = conductanceAt(moving, { m_a: air.m_a, m_w: Infinity }, film(T_w_in));
  let T_3 = (air.T_2 + T_w_in) / 2;
  for (let i = 0; i < ROUNDS; i++) {
    const NTU = transferUnits.compute({ UA, C_a: rateOfAir(air, T_3, plain) });
    const P = arrangement.effectiveness.compute({ NTU, R: 0 });
    const next = coolerOutletTemperature.compute({ T_in: air.T_2, P, T_w_in });
    const moved = Math.abs(next - T_3);
    T_3 = next;
    if (moved < SETTLED) break;
  }
  return T_3;
}

/** Refuses water that enters no colder than the air. */
export function refuseWarmWater({ air }: MovingCooler, T_w_in: SI): void {
  refuse(
    T_w_in >= air.T_2,
    "T_w_in",
    "The water enters no colder than the air, so it cannot cool it. It has to be below the bound.",
    { value: air.T_2, kind: "temperature" },
  );
}

/** Notes for a state of air and water: dew, and boiling in the stream or at the hot wall. Gives the margin of each in K. */
export function noteMovingState(
  { air, coolant }: MovingCooler,
  T_w_in: SI,
  { T_3, T_w_out, T_wall }: MovingState,
  trace: Trace,
): { readonly Delta_T_sat: SI | undefined; readonly Delta_T_sat_wall: SI | undefined } {
  noteDew(air, { T_3, T_w_in }, trace);
  const Delta_T_sat = marginToBoiling(coolant, { T_w_in, T_w_out }, trace);
  if (Delta_T_sat === undefined) return { Delta_T_sat, Delta_T_sat_wall: undefined };
  const T_sat = Delta_T_sat + Math.max(T_w_in, T_w_out);
  if (T_wall > T_sat && Delta_T_sat > 0)
    trace.note({
      about: "T_wall",
      says: "At the hot end the wall may be hotter than the water boils at, so that it boils there while the stream does not. Give it more flow or more pressure. It boils at the bound.",
      limit: { value: T_sat, kind: "temperature" },
    });
  return { Delta_T_sat, Delta_T_sat_wall: T_sat - T_wall };
}

/** What a moving cooler makes of both streams, with its margins to boiling in K. */
export interface RatedMovingCooler extends MovingState {
  readonly Delta_T_sat: SI | undefined;
  readonly Delta_T_sat_wall: SI | undefined;
}

/**
 * What a cooler whose conductance moves with the flows makes of two streams.
 *
 * Throws a DomainError for what cannot be; notes what leaves a source's range, boils, condenses, or flows between laminar and
 * turbulent.
 *
 * @example
 * rateMovingCooler({ arrangement: "counter-cross-2", m_a: 0.35, T_2: 458.15, coolant: "water", p_w: 1e5, m_w: 0.9, T_w_in: 295.15,
 *   UA_a_ref: 1220.33, m_a_ref: 0.35, n_a: 0.5, R_wall: 3.1e-6, water: "rectangular", a_ch: 0.08, b_ch: 0.0025, N_ch: 15,
 *   L: 0.2, N_p: 2, r_foul: 2e-4 }).T_3 // 331.93 K
 */
export const rateMovingCooler: Model<MovingCoolerGiven & WaterGiven, RatedMovingCooler> = (
  given,
  trace = plain,
) => {
  const cooler = acceptMovingCooler(given, trace);
  const T_w_in = acceptWaterInlet(given, cooler.coolant);
  refuseWarmWater(cooler, T_w_in);
  const m_w = flowOf(given, cooler.coolant, T_w_in, trace);
  const state = movingState(cooler, { m_w, T_w_in }, trace);
  refuseScarceWater(given, m_w, state.R);
  return { ...state, ...noteMovingState(cooler, T_w_in, state, trace) };
};
