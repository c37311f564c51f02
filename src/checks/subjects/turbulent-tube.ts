import { powerLawNusselt } from "../../../calc/exchanger/film/power-law-nusselt.ts";
import { roundedFrictionFactor } from "../../../calc/exchanger/film/rounded-friction-factor.ts";
import { turbulentNusselt } from "../../../calc/exchanger/film/turbulent-nusselt.ts";
import { turbulentFrictionFactor } from "../../../calc/flow/turbulent-friction-factor.ts";
import { subject } from "../subject.ts";

export default subject<{ Re: number; Pr: number; eD: number }>(({ Re, Pr, eD }, trace) => {
  const f = trace.use(turbulentFrictionFactor, { Re, k_s: eD, d: 1 }, "tube");
  const f_smooth = trace.use(roundedFrictionFactor, { Re }, "tube");
  return {
    f,
    Nu: trace.use(turbulentNusselt, { Re, Pr, f }, "tube"),
    f_smooth,
    Nu_smooth: trace.use(turbulentNusselt, { Re, Pr, f: f_smooth }, "smooth tube"),
    Nu_heated: trace.use(powerLawNusselt, { Re, Pr, n_Pr: 0.4 }, "tube"),
    Nu_cooled: trace.use(powerLawNusselt, { Re, Pr, n_Pr: 0.3 }, "tube"),
  };
});
