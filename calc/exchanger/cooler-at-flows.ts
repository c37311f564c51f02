import { volumeFlow } from "../fluids/volume-flow.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { type Model, plain } from "../relation/trace.ts";
import { densityAt } from "./coolant.ts";
import type { Conductances } from "./moving-conductance.ts";
import {
  acceptMovingCooler,
  type MovingCoolerGiven,
  movingState,
  noteMovingState,
  type RatedMovingCooler,
  refuseWarmWater,
} from "./moving-cooler.ts";
import { type MovingFields, movingFromFields } from "./moving-from-fields.ts";
import { noteSeawater } from "./seawater-notes.ts";
import { shareOfConductance } from "./share-of-conductance.ts";
import { shareOfResistance } from "./share-of-resistance.ts";
import { transitionFlows } from "./transition-flows.ts";
import { acceptWaterInlet, flowOf, refuseScarceWater, type WaterGiven } from "./water-side.ts";

/** A cooler as a form asks for it, and both streams. */
export type CoolerAtFlowsGiven = Omit<MovingCoolerGiven, "water"> & MovingFields & WaterGiven;

/** Shares of the resistance; kg/s and m³/s of the water, and the same of where its flow stops being laminar and becomes turbulent. */
export interface CoolerAtFlows extends RatedMovingCooler {
  readonly share_a: SI;
  readonly share_w: SI;
  readonly share_wall: SI;
  readonly share_foul: SI;
  readonly m_w: SI;
  readonly V_w: SI;
  readonly m_lam: SI | undefined;
  readonly m_turb: SI | undefined;
  readonly V_lam: SI | undefined;
  readonly V_turb: SI | undefined;
}

/** The part of each side, of the wall and of dirt in the resistance to heat. */
export function sharesOf({ UA, UA_a, UA_film, R_wall, R_foul }: Conductances, trace: Trace) {
  return {
    share_a: trace.use(shareOfConductance, { UA, UA_side: UA_a }, "air side"),
    share_w: trace.use(shareOfConductance, { UA, UA_side: UA_film }, "water side"),
    share_wall: trace.use(shareOfResistance, { UA, R_side: R_wall }, "wall"),
    share_foul: trace.use(shareOfResistance, { UA, R_side: R_foul }, "dirt"),
  };
}

/**
 * What a cooler that was measured once, or whose passages are known, makes of two other streams.
 *
 * Throws a DomainError that names the field; notes what boils, condenses, grows scale or lets silt settle.
 *
 * @example
 * coolerAtFlows({ arrangement: "counterflow", known: "point", UA: 560, m_a_ref: 0.35, m_w_ref: 0.9, s_a: 0.6, s_wall: 0.02, n_a: 0.6,
 *   n_w: 0.8, m_a: 0.2, T_2: 420, coolant: "water", T_w_in: 295, m_w: 0.5 }).UA // 381.6 W/K
 */
export const coolerAtFlows: Model<CoolerAtFlowsGiven, CoolerAtFlows> = (given, trace = plain) => {
  const cooler = acceptMovingCooler({ ...given, ...movingFromFields(given, trace) }, trace);
  const { coolant } = cooler;
  const T_w_in = acceptWaterInlet(given, coolant);
  refuseWarmWater(cooler, T_w_in);
  const m_w = flowOf(given, coolant, T_w_in, trace);
  const state = movingState(cooler, { m_w, T_w_in }, trace);
  refuseScarceWater(given, m_w, state.R);
  const rho = densityAt(given, coolant, T_w_in, trace);
  noteSeawater(coolant, state, trace);
  const { from: m_lam, to: m_turb } = transitionFlows(cooler, T_w_in);
  const perDensity = (m: SI | undefined) => (m === undefined ? undefined : volumeFlow.compute({ m, rho }));
  return {
    ...state,
    ...sharesOf(state, trace),
    ...noteMovingState(cooler, T_w_in, state, trace),
    m_w,
    V_w: trace.use(volumeFlow, { m: m_w, rho }, "water"),
    m_lam,
    m_turb,
    V_lam: perDensity(m_lam),
    V_turb: perDensity(m_turb),
  };
};
