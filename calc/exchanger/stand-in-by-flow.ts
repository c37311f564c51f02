import { accept, refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import { AIR_TEMPERATURE } from "./air-side.ts";
import { type FlowFound, flowForOutlet, type LimitingSide, type OutletReach } from "./flow-for-outlet.ts";
import {
  acceptMovingCooler,
  type MovingCooler,
  type MovingCoolerGiven,
  movingState,
  noteMovingState,
  outletOfEndlessWater,
  type RatedMovingCooler,
  refuseWarmWater,
  settleMoving,
} from "./moving-cooler.ts";
import { type OutletSensitivity, outletSensitivity } from "./outlet-sensitivity.ts";
import { acceptWaterInlet } from "./water-side.ts";

/** The cooler, its water at the inlet in K, the bounds of its flow in kg/s, and the air outlet that it is to make, K. */
export interface StandInByFlowGiven extends MovingCoolerGiven {
  readonly T_w_in?: SI | undefined;
  readonly m_w_least?: SI | undefined;
  readonly m_w_most?: SI | undefined;
  readonly T_3?: SI | undefined;
}

/** kg/s, and the state there. */
export interface StandInByFlow extends OutletReach, OutletSensitivity, RatedMovingCooler {
  readonly m_w: SI;
}

const reasons: Readonly<Record<LimitingSide, string>> = {
  "air inlet":
    "The wanted outlet is not colder than the air before the cooler. It has to be below the bound.",
  "water inlet":
    "The wanted outlet is at or below the water temperature at the inlet, and no cooler goes below its water. It has to be above the bound.",
  "endless flow":
    "However much water flows, this cooler does not reach that: it is too small for the air, or the water too warm. It has to be above the bound.",
  "most flow":
    "With the most water that is allowed this cooler does not reach that. It may be as low as the bound; more water, or colder water, goes further.",
  "least flow":
    "With the least water that is allowed the air still leaves colder: this cooler cannot be made that poor by its flow. It may be as high as the bound; warmer water goes further.",
};

function boundOf(side: LimitingSide, found: OutletReach, T_2: SI, T_w_in: SI): SI {
  switch (side) {
    case "air inlet":
      return T_2;
    case "water inlet":
      return T_w_in;
    case "endless flow":
      return found.T_endless;
    case "most flow":
      return found.T_at_most;
    case "least flow":
      return found.T_at_least;
  }
}

interface Wanted {
  readonly T_w_in: SI;
  readonly m_least: SI;
  readonly m_most: SI;
  readonly T_3: SI;
}

function acceptWanted(given: StandInByFlowGiven, cooler: MovingCooler): Wanted {
  const T_w_in = acceptWaterInlet(given, cooler.coolant);
  refuseWarmWater(cooler, T_w_in);
  const flow = { kind: "massFlow", above: 0, atMost: 10_000 } as const;
  const m_least = accept("m_w_least", "The least water flow", given.m_w_least, flow);
  const m_most = accept("m_w_most", "The most water flow", given.m_w_most, flow);
  refuse(
    m_most <= m_least,
    "m_w_most",
    "The most water flow is not above the least. It has to be above the bound.",
    { value: m_least, kind: "massFlow" },
  );
  const T_3 = accept("T_3", "The wanted temperature after the cooler", given.T_3, AIR_TEMPERATURE);
  return { T_w_in, m_least, m_most, T_3 };
}

function found(cooler: MovingCooler, wanted: Wanted): FlowFound {
  const { T_w_in } = wanted;
  let last: { readonly T_3: SI; readonly T_w_out: SI } | undefined;
  const at = (m_w: SI) => {
    last = settleMoving(cooler, { m_w, T_w_in }, last);
    return last.T_3;
  };
  return flowForOutlet({
    ...wanted,
    T_2: cooler.air.T_2,
    T_endless: outletOfEndlessWater(cooler, T_w_in),
    at,
  });
}

/**
 * The flow, or the side that stands against it: for rows of a table, of which some cannot be met. Throws a DomainError only for
 * input that is none.
 */
export function flowOrSide(given: StandInByFlowGiven): FlowFound {
  const cooler = acceptMovingCooler(given, plain);
  return found(cooler, acceptWanted(given, cooler));
}

/**
 * The water flow by which a cooler makes the air outlet that another cooler makes, and how sensitive the match is.
 *
 * Throws a DomainError naming T_3 where no flow within the bounds does it; its bound is what the cooler can make.
 *
 * @example
 * standInByFlow({ arrangement: "counter-cross-2", m_a: 0.85, T_2: 463.15, coolant: "seawater", S: 0.035, T_w_in: 301.15,
 *   UA_a_ref: 6800, m_a_ref: 1, n_a: 0, water: "power", UA_w_ref: 6800, m_w_ref: 1, n_w: 0, m_w_least: 0.1, m_w_most: 6,
 *   T_3: 328.15 }).m_w // 0.3339 kg/s
 */
export const standInByFlow: Model<StandInByFlowGiven, StandInByFlow> = (given, trace = plain) => {
  const cooler = acceptMovingCooler(given, trace);
  const wanted = acceptWanted(given, cooler);
  const { T_w_in } = wanted;
  const flow = found(cooler, wanted);
  if (!flow.isMet)
    throw new DomainError("T_3", reasons[flow.side], {
      value: boundOf(flow.side, flow, cooler.air.T_2, T_w_in),
      kind: "temperature",
    });
  const { m_w, T_endless, T_at_most, T_at_least } = flow;
  const state = movingState(cooler, { m_w, T_w_in }, trace);
  return {
    ...state,
    m_w,
    T_endless,
    T_at_most,
    T_at_least,
    ...outletSensitivity(cooler, { m_w, T_w_in }, state),
    ...noteMovingState(cooler, T_w_in, state, trace),
  };
};
