import { LAMINAR_UP_TO, TURBULENT_FROM } from "../flow/flow-regimes.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain } from "../relation/trace.ts";
import { freezingOf } from "./coolant.ts";
import { type MovingCooler, settleMoving } from "./moving-cooler.ts";

/** Where the water stops being laminar and where it has become turbulent: both kg/s, or both K. Empty where nobody knows. */
export interface Transition {
  readonly from?: SI;
  readonly to?: SI;
}

/** Of the logarithm of a flow, and of a temperature in K. */
const TOLERANCE = 1e-5;

function flowAtReynolds(cooler: MovingCooler, T_w_in: SI, wanted: SI): SI {
  const { moving, film, air } = cooler;
  if ("UA_ref" in moving.water) throw new Error("the passages of the water are not known");
  const { A, D_h } = moving.water;
  const flow = (T: SI) => Math.log((wanted * A * film(T)(plain).mu) / D_h);
  // The mean temperature of the water is between these two, so that the flow is between those of their viscosities.
  const ends = [flow((T_w_in + air.T_2) / 2), flow(T_w_in)] as const;
  let last: ReturnType<typeof settleMoving> | undefined;
  const missing = (ln: SI) => {
    last = settleMoving(cooler, { m_w: Math.exp(ln), T_w_in }, last);
    return Math.log((last.Re ?? 0) / wanted);
  };
  return Math.exp(
    bracketedRoot(missing, Math.min(...ends) - 0.01, Math.max(...ends) + 0.01, { tolerance: TOLERANCE }),
  );
}

/** The flows in kg/s between which the water is neither laminar nor turbulent, for water that enters at T_w_in K. */
export function transitionFlows(cooler: MovingCooler, T_w_in: SI): Transition {
  if ("UA_ref" in cooler.moving.water) return {};
  return {
    from: flowAtReynolds(cooler, T_w_in, LAMINAR_UP_TO),
    to: flowAtReynolds(cooler, T_w_in, TURBULENT_FROM),
  };
}

/**
 * The inlet temperatures in K between which a flow of m_w kg/s is neither: the warmer water is, the further it gets. Ends where the
 * water freezes or is as warm as the air; empty where it is never between.
 */
export function transitionInlets(cooler: MovingCooler, m_w: SI): Transition {
  if ("UA_ref" in cooler.moving.water) return {};
  const [coldest, warmest] = [freezingOf(cooler.coolant), cooler.air.T_2 - 0.01];
  // Each begins anew: from where the one before ended, an end could settle on the other side of what is sought.
  const reynolds = (T_w_in: SI) => settleMoving(cooler, { m_w, T_w_in }).Re ?? 0;
  if (coldest >= warmest) return {};
  const [least, most] = [reynolds(coldest), reynolds(warmest)];
  if (most <= LAMINAR_UP_TO || least >= TURBULENT_FROM) return {};
  const at = (wanted: SI) =>
    bracketedRoot((T) => Math.log(reynolds(T) / wanted), coldest, warmest, { tolerance: TOLERANCE });
  return {
    from: least >= LAMINAR_UP_TO ? coldest : at(LAMINAR_UP_TO),
    to: most <= TURBULENT_FROM ? warmest : at(TURBULENT_FROM),
  };
}
