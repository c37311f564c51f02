import { latentHeat } from "../fluids/latent-heat.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { condensateFlow } from "./condensate-flow.ts";
import { duty } from "./duty.ts";
import { latentDuty } from "./latent-duty.ts";

/** W, W, W, kg/s: the duty, its parts from cooling and from condensing, and the water that condenses. */
export interface CoolingHeat {
  readonly Q: SI;
  readonly Q_s: SI;
  readonly Q_l: SI;
  readonly m_c: SI;
}

/**
 * The duty of a cooler whose air gives off Q_s in W with all its vapour carried along, and leaves at T_out in K with w_out of
 * the w_in kg/kg that came in: what condenses is taken to do so at the outlet.
 */
export function coolingHeat(
  air: Readonly<Record<"Q_s" | "m_da" | "w_in" | "w_out" | "T_out", SI>>,
  trace: Trace,
  where: string,
): CoolingHeat {
  const { Q_s, m_da, w_in, w_out } = air;
  if (w_out === w_in) return { Q: Q_s, Q_s, Q_l: 0, m_c: 0 };
  const m_c = trace.use(condensateFlow, { m_da, w_in, w_out }, where);
  const h_fg = trace.use(latentHeat, { T: air.T_out }, where);
  const Q_l = trace.use(latentDuty, { m_c, h_fg }, where);
  return { Q: trace.use(duty, { Q_s, Q_l }, where), Q_s, Q_l, m_c };
}
