import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SI } from "../quantity/domain-error.ts";

/**
 * A loss in Pa that depends on the pressure behind it, since the density there does: a + b/p with b above zero, and a alone
 * at an endless pressure.
 */
export type LossBefore = (p_out: SI) => SI;

const TOLERANCE = 1e-13;
/** More than rounding makes of a pressure, and less than anybody sees. */
const ROUNDING = 1e-12;
/** So little of a flow loses nothing. */
const NO_FLOW = 1e-12;

/**
 * The pressure behind at which the most air passes, and what the inlet pressure then is above the one that it takes.
 * Below zero, no air passes at such a flow.
 */
function turn(p_in: SI, loss: LossBefore): { readonly p: SI; readonly margin: SI } {
  const a = loss(Number.POSITIVE_INFINITY);
  const p = Math.sqrt((loss(p_in) - a) * p_in);
  return { p, margin: (1 - ROUNDING) * p_in - a - 2 * p };
}

/** What is left of the inlet pressure p_in where the loss takes most that it can, in Pa; below zero where no air passes. */
export const marginOfPressure = (p_in: SI, loss: LossBefore): SI =>
  p_in > 0 ? turn(p_in, loss).margin : p_in;

/**
 * The pressure in Pa behind a loss that itself depends on that pressure, by a bracketed root. Of the two that fit, the
 * higher: at the lower one, less pressure behind would let less air through, as no core does. Undefined where the loss
 * would take all the pressure there is.
 *
 * @example pressureLeft(200e3, (p) => 1e9 / p) // 194 868 Pa
 */
export function pressureLeft(p_in: SI, loss: LossBefore): SI | undefined {
  if (!(p_in > 0)) return undefined;
  const { p: least, margin } = turn(p_in, loss);
  if (!(margin > 0)) return undefined;
  const most = (p_in - loss(Number.POSITIVE_INFINITY)) * (1 + ROUNDING);
  return bracketedRoot((p) => p_in - loss(p) - p, least, most, { tolerance: TOLERANCE * p_in });
}

/**
 * The most flow in kg/s that leaves a pressure: where `margin`, which falls with the flow, is zero. At `beyond` it is below
 * zero.
 */
export const mostFlow = (margin: (m: SI) => SI, beyond: SI): SI =>
  bracketedRoot(margin, NO_FLOW * beyond, beyond, { tolerance: TOLERANCE * beyond });
