import { criticalSpeedRatio } from "../../../calc/flow/critical-speed-ratio.ts";
import { frictionToChoking } from "../../../calc/flow/friction-to-choking.ts";
import { machFromFrictionToChoking } from "../../../calc/flow/mach-from-friction-to-choking.ts";
import { staticPressureAfterFriction } from "../../../calc/flow/static-pressure-after-friction.ts";
import { totalOverStatic } from "../../../calc/flow/total-over-static.ts";
import { totalPressureAfterFriction } from "../../../calc/flow/total-pressure-after-friction.ts";
import { subject } from "../subject.ts";

/** From the given Mach number to the end of the pipe at which the stream chokes. */
export default subject<{ Ma: number; kappa: number }>(({ Ma, kappa }, trace) => {
  const friction = trace.use(frictionToChoking, { Ma, kappa }, "inlet");
  const chi_in = trace.use(criticalSpeedRatio, { Ma, kappa }, "inlet");
  const chi_end = trace.use(criticalSpeedRatio, { Ma: 1, kappa }, "end");
  const ends = { chi_in, chi_end, Ma_in: Ma, Ma_end: 1 };
  const p_stat_end = trace.use(staticPressureAfterFriction, { p_stat_in: 1, ...ends }, "pipe");
  const Pi_in = trace.use(totalOverStatic, { Ma, kappa }, "inlet");
  const Pi_end = trace.use(totalOverStatic, { Ma: 1, kappa }, "end");
  const p_tot_end = trace.use(
    totalPressureAfterFriction,
    { p_tot_in: Pi_in, p_stat_in: 1, p_stat_end, Pi_in, Pi_end },
    "pipe",
  );
  return {
    friction,
    p_ratio: 1 / p_stat_end,
    p_tot_ratio: Pi_in / p_tot_end,
    p_over_total: 1 / Pi_in,
    Ma_back: trace.use(machFromFrictionToChoking, { Lambda_left: friction, kappa }, "inlet"),
  };
});
