import { LAMINAR_UP_TO, TURBULENT_FROM } from "../flow/flow-regimes.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { accept, refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import { AIR_TEMPERATURE } from "./air-side.ts";
import { dutyOfAll } from "./duty-of-all.ts";
import { evenShare } from "./even-share.ts";
import { flowOfAll } from "./flow-of-all.ts";
import {
  acceptMovingCooler,
  type MovingCooler,
  type MovingCoolerGiven,
  movingState,
  noteMovingState,
  type RatedMovingCooler,
  refuseWarmWater,
  settleMoving,
} from "./moving-cooler.ts";
import { noteSeawater } from "./seawater-notes.ts";
import { acceptWaterInlet, flowOf, LARGEST_RATIO, rateOfWater, type WaterGiven } from "./water-side.ts";

/** The outlet that is wanted, K; `N_c` coolers alike, one unless given; the water flow is that of all of them. */
export interface AirCapacityGiven extends Omit<MovingCoolerGiven, "m_a">, WaterGiven {
  readonly T_3?: SI | undefined;
  readonly N_c?: SI | undefined;
}

/**
 * Air flow and duty of all coolers, and the state of each: kg/s, W, K. `m_w_lam` and `m_w_turb` are the water flows of all at which
 * the water would stop being laminar and have become turbulent, were it as warm as here: missing where the passages are not known.
 */
export interface AirCapacity extends RatedMovingCooler {
  readonly m_a: SI;
  readonly m_a_each: SI;
  readonly m_w: SI;
  readonly m_w_each: SI;
  readonly Q_each: SI;
  readonly m_w_lam: SI | undefined;
  readonly m_w_turb: SI | undefined;
}

/** Of what the water carries, in heat-capacity rate: the least air that is looked at. */
const LEAST = 1e-6;
/** Of the logarithm of a flow. */
const TOLERANCE = 1e-12;

/**
 * How much air a cooler carries, or several alike side by side, so that it leaves at a wanted temperature.
 *
 * Air and water are divided evenly. Throws a DomainError that names T_3 where no air flow does it: its bound is what the water, the
 * least air or the most air makes.
 *
 * @example
 * airCapacity({ arrangement: "counter-cross-2", T_2: 458.15, coolant: "water", m_w: 0.9, T_w_in: 295.15, UA_a_ref: 1220.33,
 *   m_a_ref: 0.35, n_a: 0.5, R_wall: 3.1e-6, water: "rectangular", a_ch: 0.08, b_ch: 0.0025, N_ch: 15, L: 0.2, N_p: 2,
 *   r_foul: 2e-4, T_3: 331.93 }).m_a // 0.3500 kg/s
 */
export const airCapacity: Model<AirCapacityGiven, AirCapacity> = (given, trace = plain) => {
  const N_c = accept("N_c", "The number of coolers", given.N_c ?? 1, {
    kind: "ratio",
    atLeast: 1,
    atMost: 1000,
  });
  refuse(!Number.isInteger(N_c), "N_c", "The number of coolers has to be a whole number.");
  const cooler = acceptMovingCooler({ ...given, m_a: 1 }, trace);
  const T_w_in = acceptWaterInlet(given, cooler.coolant);
  refuseWarmWater(cooler, T_w_in);
  const m_w = flowOf(given, cooler.coolant, T_w_in, trace);
  const T_3 = acceptWanted(given.T_3, cooler.air.T_2, T_w_in);
  const m_w_each = trace.use(evenShare, { m: m_w, N_c }, "water");
  const m_a_each = flowFor(cooler, { m_w: m_w_each, T_w_in }, T_3);
  const state = movingState(withAir(cooler, m_a_each), { m_w: m_w_each, T_w_in }, trace);
  noteSeawater(cooler.coolant, state, trace);
  const perReynolds = state.Re === undefined ? undefined : m_w / state.Re;
  return {
    ...state,
    m_a_each,
    m_a: trace.use(flowOfAll, { m_each: m_a_each, N_c }, "air"),
    m_w,
    m_w_each,
    Q_each: state.Q,
    Q: trace.use(dutyOfAll, { Q_each: state.Q, N_c }, "all coolers"),
    m_w_lam: perReynolds && perReynolds * LAMINAR_UP_TO,
    m_w_turb: perReynolds && perReynolds * TURBULENT_FROM,
    ...noteMovingState(withAir(cooler, m_a_each), T_w_in, state, trace),
  };
};

const withAir = (cooler: MovingCooler, m_a: SI): MovingCooler => ({
  ...cooler,
  air: { ...cooler.air, m_a },
});

function acceptWanted(wanted: SI | undefined, T_2: SI, T_w_in: SI): SI {
  const T_3 = accept("T_3", "The wanted temperature after the cooler", wanted, AIR_TEMPERATURE);
  refuse(
    T_3 >= T_2,
    "T_3",
    "The wanted outlet is not colder than the air before the cooler. It has to be below the bound.",
    { value: T_2, kind: "temperature" },
  );
  refuse(
    T_3 <= T_w_in,
    "T_3",
    "The wanted outlet is at or below the water temperature at the inlet, and no cooler goes below its water. It has to be above the bound.",
    { value: T_w_in, kind: "temperature" },
  );
  return T_3;
}

/** The air flow of one cooler, between next to none and as much as the water can bear. */
function flowFor(cooler: MovingCooler, water: { readonly m_w: SI; readonly T_w_in: SI }, T_3: SI): SI {
  const { T_w_in } = water;
  const { T_2 } = cooler.air;
  const outlet = (ln: number) => settleMoving(withAir(cooler, Math.exp(ln)), water).T_3;
  const C_w = rateOfWater(cooler.coolant, water.m_w, { T_w_in, T_w_out: T_w_in + 1 }, plain);
  const perKilogram = settleMoving(cooler, water).C_a;
  const [least, most] = [
    Math.log((LEAST * C_w) / perKilogram),
    Math.log((LARGEST_RATIO * C_w) / perKilogram),
  ];
  const [coldest, warmest] = [outlet(least), outlet(most)];
  if (T_3 < coldest)
    throw new DomainError(
      "T_3",
      "Even next to no air leaves this cooler warmer than that, whatever flows. It may be as low as the bound; colder water goes further.",
      { value: coldest, kind: "temperature" },
    );
  if (T_3 > warmest)
    throw new DomainError(
      "T_3",
      "So near to the air before the cooler, no air flow is too much for this one. It may be as high as the bound.",
      { value: Math.min(warmest, T_2), kind: "temperature" },
    );
  return Math.exp(bracketedRoot((ln) => outlet(ln) - T_3, least, most, { tolerance: TOLERANCE }));
}
