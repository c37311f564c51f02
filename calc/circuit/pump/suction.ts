import { accept } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { type Model, plain } from "../../relation/trace.ts";
import { type LiquidGiven, liquidOf } from "../liquid.ts";
import { suctionHead } from "./suction-head.ts";
import { suctionMargin } from "./suction-margin.ts";

/**
 * What a pump draws: pressure on the water in Pa absolute, loss up to the pump in Pa, height of the pump above the water in
 * m, below zero where it stands lower, and the suction head in m that it needs.
 */
export interface SuctionGiven extends LiquidGiven {
  readonly p_surf?: SI | undefined;
  readonly Delta_p_suc?: SI | undefined;
  readonly h_suc?: SI | undefined;
  readonly NPSH_R?: SI | undefined;
}

/** m, Pa. */
export interface Suction {
  readonly NPSH_A: SI;
  readonly Delta_NPSH: SI | undefined;
  readonly p_v: SI;
}

/** Head in m that a pump should have to spare. Common practice, no source. */
export const SPARE = 0.6;

/**
 * Suction head that a pump has, and what is left over what it needs, where that is known. Notes water that boils at the
 * pump, and a margin below 0.6 m (common practice).
 *
 * @example
 * suction({ liquid: "water", T_w: 303.15, p_surf: 98e3, Delta_p_suc: 6e3, h_suc: 1.5, NPSH_R: 3 }).NPSH_A // 7.487 m
 */
export const suction: Model<SuctionGiven, Suction> = (given, trace = plain) => {
  const p_surf = accept("p_surf", "The pressure on the water, absolute,", given.p_surf, {
    kind: "pressure",
    atLeast: 1,
    atMost: 2e6,
  });
  const { rho, p_v } = liquidOf(given, p_surf, "p_surf", trace);
  const Delta_p = accept("Delta_p_suc", "The loss before the pump", given.Delta_p_suc, {
    kind: "pressureDifference",
    atLeast: 0,
    atMost: 1e6,
  });
  const h_suc = accept("h_suc", "The height of the pump above the water", given.h_suc, {
    kind: "head",
    atLeast: -200,
    atMost: 50,
  });
  const NPSH_A = trace.use(suctionHead, { p_surf, p_v, Delta_p, rho, h_suc }, "pump");
  if (NPSH_A <= 0)
    trace.note({
      about: "NPSH_A",
      says: "The water boils before it reaches the pump, which then draws none. A lower pump, cooler water, or a wider and cleaner suction pipe is needed.",
    });
  if (given.NPSH_R === undefined) return { NPSH_A, Delta_NPSH: undefined, p_v };
  const NPSH_R = accept("NPSH_R", "The suction head that the pump needs", given.NPSH_R, {
    kind: "head",
    atLeast: 0,
    atMost: 100,
  });
  const Delta_NPSH = trace.use(suctionMargin, { NPSH_A, NPSH_R }, "pump");
  if (Delta_NPSH < SPARE && NPSH_A > 0)
    trace.note({
      about: "Delta_NPSH",
      says:
        Delta_NPSH < 0
          ? "The pump has less suction head than it needs: it cavitates, loses head and wears."
          : "The pump should have the bound to spare, by common practice: strainers clog and water warms.",
      ...(Delta_NPSH < 0 ? {} : { limit: { value: SPARE, kind: "head" } }),
    });
  return { NPSH_A, Delta_NPSH, p_v };
};
