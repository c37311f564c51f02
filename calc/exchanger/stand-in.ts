import { volumeFlow } from "../fluids/volume-flow.ts";
import { accept } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { coolantBounds, densityAt } from "./coolant.ts";
import type { OutletReach } from "./flow-for-outlet.ts";
import { boilingFlow, boilingInlet, boilingOf, siltFlow } from "./flow-limits.ts";
import { missingLoss } from "./missing-loss.ts";
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
import { type MovingFields, movingFromFields } from "./moving-from-fields.ts";
import { type OutletSensitivity, outletSensitivity } from "./outlet-sensitivity.ts";
import { noteSeawater } from "./seawater-notes.ts";
import { flowOrSide, standInByFlow } from "./stand-in-by-flow.ts";
import { standInByTempering } from "./stand-in-by-tempering.ts";
import { type TargetGiven, targetOutlet } from "./target-outlet.ts";
import { transitionFlows, transitionInlets } from "./transition-flows.ts";
import { acceptWaterInlet, flowOf, refuseScarceWater } from "./water-side.ts";

/**
 * The rig's cooler as a form asks for it, what the other cooler makes, and the way: throttle the water between two flows in kg/s,
 * temper a steady flow from a supply, both temperatures in K, or leave the water as it is. Losses of both coolers in Pa.
 */
export interface StandInGiven
  extends Omit<MovingCoolerGiven, "water" | "w" | "p_2" | "T_2">,
    MovingFields,
    TargetGiven {
  readonly way: "throttle" | "temper" | "now";
  readonly T_w_in?: SI | undefined;
  readonly m_w?: SI | undefined;
  readonly m_w_least?: SI | undefined;
  readonly m_w_most?: SI | undefined;
  readonly T_cold?: SI | undefined;
  readonly Delta_p_rig?: SI | undefined;
}

type Match = RatedMovingCooler & OutletSensitivity & { readonly m_w: SI; readonly T_w_in: SI };

/** Where a mark stands in a chart of the outlet: flows in kg/s over the flow, temperatures in K over the inlet. */
interface Marks {
  readonly m_lam?: SI | undefined;
  readonly m_turb?: SI | undefined;
  readonly m_boil?: SI | undefined;
  readonly m_silt?: SI | undefined;
  readonly T_lam?: SI | undefined;
  readonly T_turb?: SI | undefined;
  readonly T_boil?: SI | undefined;
}

/** K, Pa, kg/s, m³/s. What a match would tell is missing where there is none. */
export interface StandIn extends Partial<Match>, Partial<OutletReach>, Marks {
  readonly T_target: SI;
  readonly T_sat: SI | undefined;
  readonly V_w?: SI;
  readonly T_at_cold?: SI | undefined;
  readonly m_fresh?: SI | undefined;
  readonly m_back?: SI | undefined;
  readonly Delta_p_add: SI;
}

type Rig = StandInGiven & MovingCoolerGiven & { readonly T_3: SI };
type Way = (
  rig: Rig,
  cooler: MovingCooler,
  target: string,
  trace: Trace,
) => Omit<StandIn, "T_target" | "T_sat" | "Delta_p_add">;

/**
 * What a search finds; or nothing, with its reason as a note, where the target is out of reach: then the cooler and its limits can
 * still be shown.
 */
function reached<T>(search: () => T, fields: Readonly<Record<string, string>>, trace: Trace): T | undefined {
  try {
    return search();
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    const about = fields[error.field];
    if (about === undefined) throw error;
    trace.note({ about, says: error.message, ...(error.limit && { limit: error.limit }) });
    return undefined;
  }
}

const marksOverFlow = (cooler: MovingCooler, T_w_in: SI, flows: readonly [SI, SI]): Marks => {
  const { from: m_lam, to: m_turb } = transitionFlows(cooler, T_w_in);
  return { m_lam, m_turb, m_boil: boilingFlow(cooler, T_w_in, flows), m_silt: siltFlow(cooler, T_w_in) };
};

const throttle: Way = (rig, cooler, target, trace) => {
  const found = reached(() => standInByFlow(rig, trace), { T_3: target }, trace);
  const T_w_in = rig.T_w_in as SI;
  const marks = marksOverFlow(cooler, T_w_in, [rig.m_w_least as SI, rig.m_w_most as SI]);
  if (found) return { ...found, T_w_in, ...marks };
  const { T_at_least, T_at_most, T_endless } = flowOrSide(rig);
  return { T_at_least, T_at_most, T_endless, ...marks };
};

const temper: Way = (rig, cooler, target, trace) => {
  const { coolant } = cooler;
  const T_cold = accept("T_cold", "The temperature of the cold supply", rig.T_cold, coolantBounds(coolant));
  const found = reached(() => standInByTempering(rig, trace), { T_3: target, T_cold: "T_cold" }, trace);
  const m_w = flowOf(rig, coolant, T_cold, plain);
  const { from: T_lam, to: T_turb } = transitionInlets(cooler, m_w);
  const isColder = T_cold < cooler.air.T_2;
  return {
    ...(found && { ...found, m_w, ...outletSensitivity(cooler, { m_w, T_w_in: found.T_w_in }, found) }),
    T_at_cold: isColder ? settleMoving(cooler, { m_w, T_w_in: T_cold }).T_3 : undefined,
    T_lam,
    T_turb,
    T_boil: boilingInlet(cooler, m_w),
  };
};

/** Flows so many times as small and as large are looked at for one at which the wall boils. */
const AROUND = 20;

const now: Way = (rig, cooler, _target, trace) => {
  const T_w_in = acceptWaterInlet(rig, cooler.coolant);
  refuseWarmWater(cooler, T_w_in);
  const m_w = flowOf(rig, cooler.coolant, T_w_in, trace);
  const state = movingState(cooler, { m_w, T_w_in }, trace);
  refuseScarceWater(rig, m_w, state.R);
  return {
    ...state,
    m_w,
    T_w_in,
    ...noteMovingState(cooler, T_w_in, state, trace),
    ...outletSensitivity(cooler, { m_w, T_w_in }, state),
    ...marksOverFlow(cooler, T_w_in, [m_w / AROUND, m_w * AROUND]),
  };
};

const ways: Readonly<Record<StandInGiven["way"], Way>> = { throttle, temper, now };

/** K for a hundredth of the flow. Common practice, no source: past it a valve does not hold the outlet within a kelvin. */
const RESTLESS: SI = 0.2;

function noteMatch(found: Partial<Match>, cooler: MovingCooler, trace: Trace): void {
  const { T_wall, c_w, dT_3_flow } = found;
  if (T_wall !== undefined) noteSeawater(cooler.coolant, { T_wall, c_w }, trace);
  if (dT_3_flow !== undefined && Math.abs(dT_3_flow) > RESTLESS)
    trace.note({
      about: "dT_3_flow",
      says: "Few valves hold a flow so well that the outlet stays within a kelvin here. Hold a larger flow, and temper the water. A hundredth of the flow should move the outlet by less than the bound (common practice).",
      limit: { value: RESTLESS, kind: "temperatureDifference" },
    });
}

function lossOf(given: StandInGiven, trace: Trace): SI {
  const bounds = { kind: "pressureDifference", atLeast: 0, atMost: 1e6 } as const;
  const Delta_p_t = accept("Delta_p_t", "The pressure lost in the other cooler", given.Delta_p_t, bounds);
  const Delta_p = accept("Delta_p_rig", "The pressure lost in the rig's cooler", given.Delta_p_rig, bounds);
  const Delta_p_add = trace.use(missingLoss, { Delta_p_t, Delta_p }, "charge");
  if (Delta_p_add < 0)
    trace.note({
      about: "Delta_p_add",
      says: "The cooler on the rig loses more pressure than the other one, and no restriction gives that back. Raise the boost by so much, or say with the result that it was not matched.",
    });
  return Delta_p_add;
}

/**
 * By which water a cooler on a rig makes of the charge what another cooler makes, how steadily, and what stands in the way.
 *
 * Throws a DomainError that names the field for input that is none. A target that is out of reach is a note with the limit, and
 * the match is missing.
 *
 * @example
 * standIn({ way: "temper", target: "outlet", T_3: 340, arrangement: "counterflow", known: "point", UA: 560, m_a_ref: 0.35,
 *   m_w_ref: 0.9, s_a: 0.6, n_a: 0.6, n_w: 0.8, m_a: 0.3, T_2: 430, coolant: "water", m_w: 1, T_cold: 288, Delta_p_t: 8000,
 *   Delta_p_rig: 700 }).T_w_in // 320.6 K
 */
export const standIn: Model<StandInGiven, StandIn> = (given, trace = plain) => {
  const { T_3, field } = targetOutlet(given, trace);
  const moving = movingFromFields(given, trace);
  const rig = { ...given, ...moving, T_3, p_2: given.p_2 ?? given.p_m };
  const cooler = acceptMovingCooler(rig, plain);
  const found = ways[given.way](rig, cooler, field, trace);
  noteMatch(found, cooler, trace);
  const { m_w, T_w_in } = found;
  const isMet = m_w !== undefined && T_w_in !== undefined;
  return {
    ...found,
    ...(isMet && {
      V_w: trace.use(volumeFlow, { m: m_w, rho: densityAt(rig, cooler.coolant, T_w_in, trace) }, "water"),
    }),
    T_target: T_3,
    T_sat: boilingOf(cooler.coolant),
    Delta_p_add: lossOf(given, trace),
  };
};
