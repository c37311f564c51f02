import { type EveryRoot, everyRoot } from "../numerics/every-root.ts";
import type { SI } from "../quantity/domain-error.ts";
import { coolantBounds } from "./coolant.ts";
import { isTransition } from "./film/nusselt-of-flow.ts";
import { type MovingCooler, settleMoving } from "./moving-cooler.ts";

/** So many inlet temperatures are looked at before those between are searched. */
const PARTS = 40;
/** Nearer to the wanted outlet, in K, the water has nothing left to take. */
export const NO_SPAN = 0.01;

/** The outlet that is wanted and the coldest inlet that is looked at, K; and the flow in kg/s of water that enters at a temperature. */
export interface InletsWanted {
  readonly T_3: SI;
  readonly coldest: SI;
  readonly flowAt: (T_w_in: SI) => SI;
}

/**
 * Every temperature of the water at its inlet, K, at which a cooler makes an air outlet: where the film answers to the temperature
 * there may be several. `lowest` and `highest` tell by how much the outlets seen miss it.
 */
export function inletsForOutlet(cooler: MovingCooler, { T_3, coldest, flowAt }: InletsWanted): EveryRoot {
  const warmest = Math.min(T_3 - NO_SPAN, coolantBounds(cooler.coolant).atMost);
  const points = Array.from({ length: PARTS + 1 }, (_, i) => coldest + ((warmest - coldest) * i) / PARTS);
  // Each begins anew: from where the one before ended, a place could settle otherwise the second time.
  const excess = (T_w_in: SI) => settleMoving(cooler, { m_w: flowAt(T_w_in), T_w_in }).T_3 - T_3;
  return everyRoot(excess, points, cooler.air.T_2 - coldest);
}

/** Of the inlets that serve, the first whose flow is not between laminar and turbulent; the first of all where each is. */
export function calmInlet(cooler: MovingCooler, inlets: readonly SI[], flowAt: InletsWanted["flowAt"]): SI {
  const isCalm = (T_w_in: SI) => !isTransition(settleMoving(cooler, { m_w: flowAt(T_w_in), T_w_in }).Re ?? 0);
  return inlets.find(isCalm) ?? (inlets[0] as SI);
}
