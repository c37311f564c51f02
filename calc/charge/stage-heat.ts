import { constantSensibleDuty } from "../exchanger/constant-sensible-duty.ts";
import { type CoolingHeat, coolingHeat } from "../exchanger/cooling-heat.ts";
import { sensibleDuty } from "../exchanger/sensible-duty.ts";
import { enthalpy } from "../fluids/enthalpy.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import type { Stage, StagePath } from "./stage.ts";

const NOTHING: CoolingHeat = { Q: 0, Q_s: 0, Q_l: 0, m_c: 0 };

/** What a stage's cooler takes from `m_a` kg/s of moist air, of which `m_da` is dry, and the water that condenses there. */
export function stageHeat(
  { cooler, words }: Stage,
  path: StagePath,
  { m_a, m_da }: { readonly m_a: SI; readonly m_da: SI },
  trace: Trace,
): CoolingHeat {
  if (cooler.kind === "none") return NOTHING;
  const { before, after, compressed } = path;
  const { c_p } = compressed;
  const { w, T: T_in } = before;
  const T_out = after.T;
  const where = words.cooler;
  const Q_s =
    c_p === undefined
      ? trace.use(
          sensibleDuty,
          {
            m_a,
            h_in: compressed.h_out ?? trace.use(enthalpy, { T: T_in, w }, `before the ${where}`),
            h_out: trace.use(enthalpy, { T: T_out, w }, `after the ${where}, all vapour carried along`),
          },
          where,
        )
      : trace.use(constantSensibleDuty, { m_a, c_p, T_in, T_out }, where);
  return coolingHeat({ Q_s, m_da, w_in: w, w_out: after.w, T_out }, trace, where);
}
