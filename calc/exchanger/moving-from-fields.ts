import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import type { MovingGiven } from "./moving-conductance.ts";
import { movingFromOnePoint } from "./moving-from-one-point.ts";

/**
 * How a conductance that moves is known: from one measured point, `UA` at `m_a_ref` and `m_w_ref` with the shares of its parts; or
 * from the air side's `UA_a_ref` at `m_a_ref` and the passages of the water. Units as in MovingGiven.
 */
export interface MovingFields extends Omit<MovingGiven, "water"> {
  readonly known: "point" | "round" | "rectangular";
  readonly UA?: SI | undefined;
  readonly s_a?: SI | undefined;
  readonly s_wall?: SI | undefined;
  readonly s_foul?: SI | undefined;
}

/**
 * What a form asks of a cooler whose conductance moves, as its model takes it. Throws what movingFromOnePoint throws.
 *
 * @example
 * movingFromFields({ known: "point", UA: 254.275, m_a_ref: 0.319, m_w_ref: 0.536, s_a: 0.62, n_a: 0.54, n_w: 0.84 }).UA_a_ref // 410.1 W/K
 */
export const movingFromFields: Model<MovingFields, MovingGiven> = (given, trace = plain) =>
  given.known === "point"
    ? movingFromOnePoint({ ...given, m_a: given.m_a_ref, m_w: given.m_w_ref }, trace)
    : { ...given, water: given.known };
