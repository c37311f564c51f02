import { boreArea } from "../flow/bore-area.ts";
import { ductSpeed } from "../flow/duct-speed.ts";
import { fittingLoss } from "../flow/fitting-loss.ts";
import { frictionArgument } from "../flow/friction-argument.ts";
import { frictionFactorAllRegimes } from "../flow/friction-factor-all-regimes.ts";
import { frictionPartBeyondLaminar } from "../flow/friction-part-beyond-laminar.ts";
import { frictionTransitionPart } from "../flow/friction-transition-part.ts";
import { frictionTurbulentPart } from "../flow/friction-turbulent-part.ts";
import { lossAtFlow } from "../flow/loss-at-flow.ts";
import { pipeLoss } from "../flow/pipe-loss.ts";
import { reynoldsNumber } from "../flow/reynolds-number.ts";
import { massFlow } from "../fluids/mass-flow.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import type { Liquid } from "./liquid.ts";

/** A pipe: length, bore and roughness in m, and the sum of the loss coefficients of its fittings. */
export interface PipeGiven {
  readonly L?: SI | undefined;
  readonly d?: SI | undefined;
  readonly k_s?: SI | undefined;
  readonly K?: SI | undefined;
}

/** What a core loses at one flow, Pa and m³/s, and the power of the flow with which that grows. */
export interface CoreGiven {
  readonly Delta_p_ref?: SI | undefined;
  readonly V_ref?: SI | undefined;
  readonly n_p?: SI | undefined;
}

export interface Pipe {
  readonly L: SI;
  readonly d: SI;
  readonly k_s: SI;
  readonly K: SI;
}

export interface Core {
  readonly Delta_p_ref: SI;
  readonly V_ref: SI;
  readonly n_p: SI;
}

/** Throws a DomainError that names L, d, k_s or K, with `mark` behind it; `what` says which pipe. */
export function acceptPipe(given: PipeGiven, mark = "", what = "the pipe"): Pipe {
  const L = accept(`L${mark}`, `The length of ${what}`, given.L, {
    kind: "pipeLength",
    atLeast: 0,
    atMost: 1e5,
  });
  const d = accept(`d${mark}`, `The bore of ${what}`, given.d, { kind: "length", atLeast: 1e-4, atMost: 5 });
  const k_s = accept(`k_s${mark}`, `The roughness of ${what}`, given.k_s, {
    kind: "length",
    atLeast: 0,
    atMost: 0.05 * d,
  });
  const K = accept(`K${mark}`, `The loss coefficient of the fittings of ${what}`, given.K, {
    kind: "ratio",
    atLeast: 0,
    atMost: 1e6,
  });
  return { L, d, k_s, K };
}

/** Throws a DomainError that names Delta_p_ref, V_ref or n_p, with `mark` behind it. */
export function acceptCore(given: CoreGiven, mark = "", what = "the core"): Core {
  return {
    Delta_p_ref: accept(`Delta_p_ref${mark}`, `The loss of ${what}`, given.Delta_p_ref, {
      kind: "pressureDifference",
      atLeast: 0,
      atMost: 1e7,
    }),
    V_ref: accept(`V_ref${mark}`, `The flow at which the loss of ${what} is known`, given.V_ref, {
      kind: "liquidFlow",
      atLeast: 1e-9,
      atMost: 10,
    }),
    n_p: accept(`n_p${mark}`, `The exponent of the loss of ${what}`, given.n_p, {
      kind: "ratio",
      atLeast: 0.8,
      atMost: 2.2,
    }),
  };
}

/** Pa: by friction on the wall in any regime, and in fittings. m/s: the speed. */
export interface PipeLosses {
  readonly Delta_p_wall: SI;
  readonly Delta_p_other: SI;
  readonly c: SI;
  readonly Re: SI;
}

/** So slow that the loss is below any digit of a pressure, and the powers in the friction factor have no number any more. */
const STANDS_STILL = 1e-12;

/** What a pipe takes from a flow in m³/s; nothing from no flow. */
export function lossesOfPipe(
  pipe: Pipe,
  V_w: SI,
  { rho, mu }: Liquid,
  trace: Trace,
  where = "pipe",
): PipeLosses {
  if (V_w === 0) return { Delta_p_wall: 0, Delta_p_other: 0, c: 0, Re: 0 };
  const { L, d, k_s, K } = pipe;
  const A = trace.use(boreArea, { d }, where);
  const m_a = trace.use(massFlow, { rho, V_dot: V_w }, where);
  const c = trace.use(ductSpeed, { m_a, rho, A }, where);
  const Re = trace.use(reynoldsNumber, { rho, c, d, mu }, where);
  if (Re < STANDS_STILL) return { Delta_p_wall: 0, Delta_p_other: 0, c, Re };
  const Theta_k = trace.use(frictionArgument, { Re, k_s, d }, where);
  const Theta_t = trace.use(frictionTurbulentPart, { Theta_k }, where);
  const Theta_l = trace.use(frictionTransitionPart, { Re }, where);
  const Theta = trace.use(frictionPartBeyondLaminar, { Theta_t, Theta_l }, where);
  const f = trace.use(frictionFactorAllRegimes, { Re, Theta }, where);
  return {
    Delta_p_wall: trace.use(pipeLoss, { f, L, d, rho, c }, where),
    Delta_p_other: trace.use(fittingLoss, { K, rho, c }, `${where}, fittings`),
    c,
    Re,
  };
}

/** What a core takes from a flow in m³/s, Pa. */
export function lossOfCore(core: Core, V_w: SI, { rho }: Liquid, trace: Trace, where = "core"): SI {
  const m = trace.use(massFlow, { rho, V_dot: V_w }, where);
  const m_ref = trace.use(massFlow, { rho, V_dot: core.V_ref }, `${where}, known loss`);
  return trace.use(lossAtFlow, { Delta_p_ref: core.Delta_p_ref, m, m_ref, n_p: core.n_p }, where);
}
