import { densityRatio } from "../compression/density-ratio.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import type { AirState } from "./stage.ts";

/** How many times denser air is in one state than in another. */
export const timesDenser = (air: AirState, other: AirState, trace: Trace, where: string): SI =>
  trace.use(
    densityRatio,
    { p_in: other.p, p_out: air.p, T_in: other.T, T_out: air.T, R_m_in: other.R_m, R_m_out: air.R_m },
    where,
  );
