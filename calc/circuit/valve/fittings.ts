import { accept } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import type { Trace } from "../../relation/trace.ts";
import { bernoulliCoefficient } from "./bernoulli-coefficient.ts";
import { fittingsSum } from "./fittings-sum.ts";
import { inletFittingsSum } from "./inlet-fittings-sum.ts";
import { reducerInletLoss } from "./reducer-inlet-loss.ts";
import { reducerOutletLoss } from "./reducer-outlet-loss.ts";

/** A valve of bore `d_v` in pipes of its own bore, or between reducers in pipes of bore `d_in` and `d_out`, all in m. */
export interface FittingsGiven {
  readonly fittings: "none" | "reducers";
  readonly d_v?: SI | undefined;
  readonly d_in?: SI | undefined;
  readonly d_out?: SI | undefined;
}

/** The sums of coefficients on the dynamic pressure in the valve, before it and around it. */
export interface Fittings {
  readonly d_v: SI;
  readonly K_isum: SI;
  readonly K_sum: SI;
}

/** Throws a DomainError for a bore that is missing, or a pipe narrower than its valve. */
export function fittingsOf(given: FittingsGiven, trace: Trace): Fittings {
  const bore = { kind: "length", atLeast: 1e-4, atMost: 5 } as const;
  const d_v = accept("d_v", "The bore of the valve", given.d_v, bore);
  if (given.fittings === "none") return { d_v, K_isum: 0, K_sum: 0 };
  const pipe = { kind: "length", atLeast: d_v, atMost: 5 } as const;
  const d_in = accept("d_in", "The bore of the pipe before the valve", given.d_in, pipe);
  const d_out = accept("d_out", "The bore of the pipe behind the valve", given.d_out, pipe);
  const K_ri = trace.use(reducerInletLoss, { d_v, d: d_in }, "before the valve");
  const K_ro = trace.use(reducerOutletLoss, { d_v, d: d_out }, "behind the valve");
  const K_Bi = trace.use(bernoulliCoefficient, { d_v, d: d_in }, "before the valve");
  const K_Bo = trace.use(bernoulliCoefficient, { d_v, d: d_out }, "behind the valve");
  return {
    d_v,
    K_isum: trace.use(inletFittingsSum, { K_ri, K_Bi }, "valve"),
    K_sum: trace.use(fittingsSum, { K_ri, K_ro, K_Bi, K_Bo }, "valve"),
  };
}
