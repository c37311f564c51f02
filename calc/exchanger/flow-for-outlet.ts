import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SI } from "../quantity/domain-error.ts";

/** What stands between a wanted outlet and the flow that would make it, in the order in which they are looked at. */
export type LimitingSide = "air inlet" | "water inlet" | "endless flow" | "most flow" | "least flow";

/** K. What the cooler makes of the air with the most and the least flow allowed, and with an endless one. */
export interface OutletReach {
  readonly T_endless: SI;
  readonly T_at_most: SI;
  readonly T_at_least: SI;
}

export type FlowFound = OutletReach &
  ({ readonly isMet: true; readonly m_w: SI } | { readonly isMet: false; readonly side: LimitingSide });

/** `at` is the air outlet in K at a water flow in kg/s, falling over the flow. K, kg/s. */
export interface FlowWanted {
  readonly T_2: SI;
  readonly T_w_in: SI;
  readonly T_3: SI;
  readonly T_endless: SI;
  readonly m_least: SI;
  readonly m_most: SI;
  readonly at: (m_w: SI) => SI;
}

/** Of the logarithm of a flow. */
const TOLERANCE = 1e-12;

/**
 * The water flow between two bounds that brings the air to a wanted outlet, or which side stands against it.
 *
 * @example
 * flowForOutlet({ T_2: 400, T_w_in: 300, T_3: 350, T_endless: 310, m_least: 0.1, m_most: 10, at: (m) => 300 + 50 / m }).m_w // 1.000 kg/s
 */
export function flowForOutlet({ T_2, T_w_in, T_3, T_endless, m_least, m_most, at }: FlowWanted): FlowFound {
  const reach = { T_endless, T_at_most: at(m_most), T_at_least: at(m_least) };
  const against = (side: LimitingSide): FlowFound => ({ ...reach, isMet: false, side });
  if (T_3 >= T_2) return against("air inlet");
  if (T_3 <= T_w_in) return against("water inlet");
  if (T_3 <= T_endless) return against("endless flow");
  if (T_3 < reach.T_at_most) return against("most flow");
  if (T_3 > reach.T_at_least) return against("least flow");
  const missing = (ln: number) => at(Math.exp(ln)) - T_3;
  const m_w = Math.exp(bracketedRoot(missing, Math.log(m_least), Math.log(m_most), { tolerance: TOLERANCE }));
  return { ...reach, isMet: true, m_w };
}
