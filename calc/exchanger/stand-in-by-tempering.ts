import { accept, refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { AIR_TEMPERATURE } from "./air-side.ts";
import { coolantBounds, freezingOf } from "./coolant.ts";
import { calmInlet, inletsForOutlet, NO_SPAN } from "./inlets-for-outlet.ts";
import { ledBackFlow } from "./led-back-flow.ts";
import { mixedInFlow } from "./mixed-in-flow.ts";
import {
  acceptMovingCooler,
  type MovingCooler,
  type MovingCoolerGiven,
  movingState,
  noteMovingState,
  type RatedMovingCooler,
} from "./moving-cooler.ts";
import { flowOf, type WaterGiven } from "./water-side.ts";

/** The cooler, its water flow, the air outlet that it is to make, and the cold supply where there is one; K. */
export interface StandInByTemperingGiven extends MovingCoolerGiven, Omit<WaterGiven, "T_w_in"> {
  readonly T_3?: SI | undefined;
  readonly T_cold?: SI | undefined;
}

/**
 * K, and the state there. `others` are further inlet temperatures that serve. `m_fresh` comes from the cold supply and `m_back` is
 * led back from the outlet, kg/s: missing where no supply was given.
 */
export interface StandInByTempering extends RatedMovingCooler {
  readonly T_w_in: SI;
  readonly others: readonly SI[];
  readonly m_fresh: SI | undefined;
  readonly m_back: SI | undefined;
}

/**
 * The temperature at which a steady flow of water has to enter, so that a cooler makes the air outlet that another cooler makes.
 *
 * Where the film answers to the temperature several may serve; of those that the supply can make, one whose flow is not between
 * laminar and turbulent is taken.
 * Throws a DomainError that names T_3 where even water that is about to freeze is too warm, and T_cold where the supply is.
 *
 * @example
 * standInByTempering({ arrangement: "counterflow", m_a: 0.3, T_2: 420, T_3: 340, coolant: "water", m_w: 1, UA_a_ref: 700,
 *   m_a_ref: 0.3, n_a: 0.6, water: "power", UA_w_ref: 1800, m_w_ref: 1, n_w: 0.8, T_cold: 290 }).T_w_in // 319.7 K
 */
export const standInByTempering: Model<StandInByTemperingGiven, StandInByTempering> = (
  given,
  trace = plain,
) => {
  const cooler = acceptMovingCooler(given, trace);
  const { air, coolant } = cooler;
  const coldest = freezingOf(coolant);
  const T_3 = accept("T_3", "The wanted temperature after the cooler", given.T_3, AIR_TEMPERATURE);
  refuse(
    T_3 >= air.T_2,
    "T_3",
    "The wanted outlet is not colder than the air before the cooler. It has to be below the bound.",
    { value: air.T_2, kind: "temperature" },
  );
  refuse(
    T_3 <= coldest + NO_SPAN,
    "T_3",
    "The wanted outlet is as cold as the coolant freezes. It has to be above the bound.",
    { value: coldest, kind: "temperature" },
  );
  const m_w = flowOf(given, coolant, coldest, trace);
  const inlets = inletsFor(cooler, m_w, T_3, coldest);
  const T_cold = acceptSupply(given, coolant, inlets);
  const makeable = inlets.filter((one) => T_cold === undefined || one >= T_cold);
  const T_w_in = calmInlet(cooler, makeable, () => m_w);
  const others = inlets.filter((one) => one !== T_w_in);
  const state = movingState(cooler, { m_w, T_w_in }, trace);
  return {
    ...state,
    T_w_in,
    others,
    ...mixed(T_cold, { m_w, T_w_in, T_w_out: state.T_w_out }, trace),
    ...noteMovingState(cooler, T_w_in, state, trace),
  };
};

function inletsFor(cooler: MovingCooler, m_w: SI, T_3: SI, coldest: SI): readonly SI[] {
  const { roots, lowest, highest } = inletsForOutlet(cooler, { T_3, coldest, flowAt: () => m_w });
  if (roots.length > 0) return roots;
  if (lowest > 0)
    throw new DomainError(
      "T_3",
      "Even with water that is about to freeze this cooler does not reach that with this flow. It may be as low as the bound; more water goes further.",
      { value: T_3 + lowest, kind: "temperature" },
    );
  throw new DomainError(
    "T_3",
    "No water that this cooler may be given is warm enough for that. It may be as high as the bound.",
    { value: T_3 + highest, kind: "temperature" },
  );
}

/** The cold supply, where there is one, which is no warmer than the warmest inlet that serves. */
function acceptSupply(
  { T_cold }: StandInByTemperingGiven,
  coolant: MovingCooler["coolant"],
  inlets: readonly SI[],
): SI | undefined {
  if (T_cold === undefined) return undefined;
  const warmest = Math.max(...inlets);
  accept("T_cold", "The temperature of the cold supply", T_cold, coolantBounds(coolant));
  refuse(
    T_cold > warmest,
    "T_cold",
    "The supply is warmer than the water has to be at the inlet of the cooler. It may be as warm as the bound.",
    { value: warmest, kind: "temperature" },
  );
  return T_cold;
}

interface Through {
  readonly m_w: SI;
  readonly T_w_in: SI;
  readonly T_w_out: SI;
}

function mixed(T_cold: SI | undefined, { m_w, T_w_in, T_w_out }: Through, trace: Trace) {
  if (T_cold === undefined) return { m_fresh: undefined, m_back: undefined };
  const m_fresh = trace.use(mixedInFlow, { m: m_w, T_warm: T_w_out, T_w_in, T_cold }, "mixing valve");
  return { m_fresh, m_back: trace.use(ledBackFlow, { m: m_w, m_fresh }, "mixing valve") };
}
