import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import type { Liquid } from "./liquid.ts";
import { pressureOfHead } from "./pump/pressure-of-head.ts";
import { type PumpGiven, pumpCurve } from "./pump/pump-curve.ts";

/**
 * What drives the water: a pump that lifts it by `h_z` m, below zero where it falls, or a tank or main that stands `h_w` m of
 * water above the outlet.
 */
export type SourceGiven =
  | (PumpGiven & { readonly source: "pump"; readonly h_z?: SI | undefined })
  | { readonly source: "head"; readonly h_w?: SI | undefined };

/** m³/s, Pa. `most` is the flow beyond which nothing is given. */
export interface Source {
  readonly most: SI;
  readonly Delta_p_z: SI;
  readonly span: readonly [SI, SI] | undefined;
  given(V_w: SI, trace: Trace): SI;
}

/** So much flow that no head drives it through a pipe. */
const BEYOND = 1e3;

/** Part of the head at no flow that is lost in the digits of the sums. */
const ROUNDING = 1e-9;

/** Throws a DomainError for a missing or impossible source, and for a pump that does not reach the height. */
export function sourceOf(given: SourceGiven, { rho }: Liquid, trace: Trace): Source {
  const pressureOf = (h: SI, through: Trace, where: string) => through.use(pressureOfHead, { rho, h }, where);
  if (given.source === "head") {
    const h_w = accept("h_w", "The height of the water above the outlet", given.h_w, {
      kind: "head",
      atLeast: 1e-3,
      atMost: 2000,
    });
    return {
      most: BEYOND,
      Delta_p_z: 0,
      span: undefined,
      given: (_, through) => pressureOf(h_w, through, "height of the water"),
    };
  }
  const pump = pumpCurve(given);
  const h_z = accept("h_z", "The height that the water is lifted", given.h_z, {
    kind: "head",
    atLeast: -1000,
    atMost: 1000,
  });
  const atNoFlow = pump.head(0);
  refuse(
    !(atNoFlow - h_z > ROUNDING * atNoFlow),
    "h_z",
    "At no flow the pump reaches only the bound, so it lifts no water to this height: pump and circuit have no point in common.",
    { value: atNoFlow, kind: "head" },
  );
  return {
    most: pump.most,
    Delta_p_z: pressureOf(h_z, trace, "lift"),
    span: pump.span,
    given: (V_w, through) => pressureOf(pump.head(V_w, through), through, "pump"),
  };
}
