import { explicitFrictionFactor } from "../../../calc/flow/explicit-friction-factor.ts";
import { frictionArgument } from "../../../calc/flow/friction-argument.ts";
import { frictionFactorAllRegimes } from "../../../calc/flow/friction-factor-all-regimes.ts";
import { frictionPartBeyondLaminar } from "../../../calc/flow/friction-part-beyond-laminar.ts";
import { frictionTransitionPart } from "../../../calc/flow/friction-transition-part.ts";
import { frictionTurbulentPart } from "../../../calc/flow/friction-turbulent-part.ts";
import { laminarFrictionFactor } from "../../../calc/flow/laminar-friction-factor.ts";
import { turbulentFrictionFactor } from "../../../calc/flow/turbulent-friction-factor.ts";
import { subject } from "../subject.ts";

/** As in the file: up to here the laminar formula is asked, past it the turbulent ones. */
const LAMINAR = 2300;

export default subject<{ Re: number; eD: number }>(({ Re, eD }, trace) => {
  const pipe = { Re, k_s: eD, d: 1 };
  const Theta_k = trace.use(frictionArgument, pipe, "pipe");
  const Theta_t = trace.use(frictionTurbulentPart, { Theta_k }, "pipe");
  const Theta_l = trace.use(frictionTransitionPart, { Re }, "pipe");
  const f_all_regimes = trace.use(
    frictionFactorAllRegimes,
    { Re, Theta: trace.use(frictionPartBeyondLaminar, { Theta_t, Theta_l }, "pipe") },
    "pipe",
  );
  if (Re < LAMINAR) return { f_all_regimes, f_laminar: trace.use(laminarFrictionFactor, { Re }, "pipe") };
  return {
    f_all_regimes,
    f_turbulent: trace.use(turbulentFrictionFactor, pipe, "pipe"),
    f_explicit: trace.use(explicitFrictionFactor, pipe, "pipe"),
  };
});
