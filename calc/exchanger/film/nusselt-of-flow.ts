import { LAMINAR_UP_TO, TURBULENT_FROM } from "../../flow/flow-regimes.ts";
import { turbulentFrictionFactor } from "../../flow/turbulent-friction-factor.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../../relation/trace.ts";
import { entranceFactor } from "./entrance-factor.ts";
import { graetzNumber } from "./graetz-number.ts";
import { laminarNusselt } from "./laminar-nusselt.ts";
import { smoothFrictionFactor } from "./smooth-friction-factor.ts";
import { transitionNusselt } from "./transition-nusselt.ts";
import { turbulentNusselt } from "./turbulent-nusselt.ts";
import { turbulentNusseltInTube } from "./turbulent-nusselt-in-tube.ts";
import { turbulentShare } from "./turbulent-share.ts";

/** A flow in a passage: `D_h` and length `L` in m, roughness `k_s` in m, `Nu_d` as laminar flow has it far from the entrance. */
export interface PassageFlow {
  readonly Re: SI;
  readonly Pr: SI;
  readonly Nu_d: SI;
  readonly D_h: SI;
  readonly L: SI;
  readonly k_s?: SI | undefined;
}

export interface NusseltOfFlow {
  readonly Nu: SI;
  readonly regime: "laminar" | "transition" | "turbulent";
}

/** Nobody knows which way the flow is; what it does there is the least certain of all. */
export const isTransition = (Re: SI): boolean => Re > LAMINAR_UP_TO && Re < TURBULENT_FROM;

export const regimeOf = (Re: SI): NusseltOfFlow["regime"] =>
  isTransition(Re) ? "transition" : Re <= LAMINAR_UP_TO ? "laminar" : "turbulent";

/**
 * Mean Nusselt number over the length of a passage, of laminar flow, turbulent flow, and what is between: there it goes in a
 * straight line over the Reynolds number, and a note says so.
 *
 * @example nusseltOfFlow({ Re: 3000, Pr: 6, Nu_d: 3.66, D_h: 0.01, L: 1 }).Nu // 17.59
 */
export const nusseltOfFlow: Model<PassageFlow, NusseltOfFlow> = (flow, trace = plain) => {
  const { Re } = flow;
  if (Re <= LAMINAR_UP_TO) return { Nu: laminar(flow, trace, "water"), regime: "laminar" };
  if (Re >= TURBULENT_FROM) return { Nu: turbulent(flow, trace, "water"), regime: "turbulent" };
  trace.note({
    about: "Re",
    says: "The water is between laminar and turbulent flow. Its heat transfer is uncertain there, changes by itself, and follows small changes of the flow steeply. Turbulent flow begins at the bound.",
    limit: { value: TURBULENT_FROM, kind: "ratio" },
  });
  const Nu_lam = laminar({ ...flow, Re: LAMINAR_UP_TO }, trace, "water, were it just laminar");
  const Nu_turb = turbulent({ ...flow, Re: TURBULENT_FROM }, trace, "water, were it just turbulent");
  const gamma_t = trace.use(turbulentShare, { Re }, "water");
  return {
    Nu: trace.use(transitionNusselt, { gamma_t, Nu_lam, Nu_turb }, "water"),
    regime: "transition",
  };
};

function laminar({ Re, Pr, Nu_d, D_h, L }: PassageFlow, trace: Trace, where: string): SI {
  const Gz = trace.use(graetzNumber, { Re, Pr, D_h, L }, where);
  return trace.use(laminarNusselt, { Nu_d, Gz }, where);
}

function turbulent({ Re, Pr, D_h, L, k_s = 0 }: PassageFlow, trace: Trace, where: string): SI {
  const f =
    k_s > 0
      ? trace.use(turbulentFrictionFactor, { Re, k_s, d: D_h }, where)
      : trace.use(smoothFrictionFactor, { Re }, where);
  const Nu = trace.use(turbulentNusselt, { Re, Pr, f }, where);
  const X_ent = trace.use(entranceFactor, { D_h, L }, where);
  return trace.use(turbulentNusseltInTube, { Nu, X_ent }, where);
}
