import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import { conductanceOfShare } from "./conductance-of-share.ts";
import type { MovingGiven } from "./moving-conductance.ts";
import { resistanceOfShare } from "./resistance-of-share.ts";

/** A measured conductance in W/K at flows in kg/s, the shares of air side, wall and dirt in its resistance, and both powers. */
export interface OnePointGiven {
  readonly UA?: SI | undefined;
  readonly m_a?: SI | undefined;
  readonly m_w?: SI | undefined;
  readonly s_a?: SI | undefined;
  readonly s_wall?: SI | undefined;
  readonly s_foul?: SI | undefined;
  readonly n_a?: SI | undefined;
  readonly n_w?: SI | undefined;
}

const share = (field: string, what: string, value: SI | undefined, above: "above" | "atLeast"): SI =>
  accept(field, what, value, { kind: "fraction", [above]: 0, below: 1 });

/**
 * How a conductance that was measured once moves with both flows: by the shares of air, wall and dirt in the resistance at that
 * point. The water has the rest.
 *
 * Throws a DomainError that names the field, or s_a where the shares leave nothing for the water.
 *
 * @example
 * movingFromOnePoint({ UA: 254.275, m_a: 0.319, m_w: 0.536, s_a: 0.62, s_wall: 0.018, n_a: 0.54, n_w: 0.84 }).UA_a_ref // 410.1 W/K
 */
export const movingFromOnePoint: Model<OnePointGiven, MovingGiven> = (given, trace = plain) => {
  const UA = accept("UA", "The heat conductance that was measured", given.UA, {
    kind: "conductance",
    above: 0,
    atMost: 1e7,
  });
  const s_a = share("s_a", "The share of the air side", given.s_a, "above");
  const s_wall = share("s_wall", "The share of the wall", given.s_wall ?? 0, "atLeast");
  const s_foul = share("s_foul", "The share of dirt", given.s_foul ?? 0, "atLeast");
  const rest = 1 - s_a - s_wall - s_foul;
  refuse(
    rest <= 0,
    "s_a",
    "Air, wall and dirt together leave no resistance for the water. The share of the air has to be below the bound.",
    { value: Math.max(0, 1 - s_wall - s_foul), kind: "fraction" },
  );
  return {
    UA_a_ref: trace.use(conductanceOfShare, { UA, s_side: s_a }, "air side"),
    m_a_ref: given.m_a,
    n_a: given.n_a,
    R_wall: trace.use(resistanceOfShare, { UA, s_side: s_wall }, "wall"),
    R_foul: trace.use(resistanceOfShare, { UA, s_side: s_foul }, "dirt"),
    water: "power",
    UA_w_ref: trace.use(conductanceOfShare, { UA, s_side: rest }, "water side"),
    m_w_ref: given.m_w,
    n_w: given.n_w,
  };
};
