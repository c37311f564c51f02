import { flowForDuty } from "../exchanger/flow-for-duty.ts";
import { meanHeatCapacity } from "../exchanger/mean-heat-capacity.ts";
import { USUAL_WATER_PRESSURE } from "../exchanger/usual-water.ts";
import { compressedWaterEnthalpy } from "../fluids/water/compressed-water-enthalpy.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import type { Stage, StagePath } from "./stage.ts";

/** kg/s, K. */
export interface StageWater {
  readonly m_w: SI | undefined;
  readonly T_w_out: SI | undefined;
}

const NONE: StageWater = { m_w: undefined, T_w_out: undefined };

/**
 * Fresh water that carries the duty Q in W away with the rise Delta_T_w in K. None where the cooler's water is not known, where
 * it heats the air, or where the water would leave as hot as the air enters, which a note says at the rise's own input.
 */
export function stageWater(
  { cooler, words }: Stage,
  path: StagePath,
  { Q, Delta_T_w, field }: { readonly Q: SI; readonly Delta_T_w: SI | undefined; readonly field: string },
  trace: Trace,
): StageWater {
  if (cooler.kind === "none" || cooler.T_w_in === undefined || Delta_T_w === undefined) return NONE;
  const rise = accept(field, "The rise of the water", Delta_T_w, {
    kind: "temperatureDifference",
    above: 0,
    atMost: 100,
  });
  if (Q < 0) return NONE;
  if (Q === 0) return { m_w: 0, T_w_out: cooler.T_w_in };
  const T_w_out = cooler.T_w_in + rise;
  const hottest = path.before.T;
  if (T_w_out >= hottest) {
    trace.note({
      about: field,
      says: "With this rise the water would leave as hot as the air enters, so no flow is shown. The rise has to be below the bound.",
      limit: { value: hottest - cooler.T_w_in, kind: "temperatureDifference" },
    });
    return NONE;
  }
  const where = `water of the ${words.cooler}`;
  const h = (T: SI, end: string) =>
    trace.use(compressedWaterEnthalpy, { T, p: USUAL_WATER_PRESSURE }, `${where}, ${end}`);
  const c_m = trace.use(
    meanHeatCapacity,
    { h_in: h(cooler.T_w_in, "inlet"), h_out: h(T_w_out, "outlet"), T_in: cooler.T_w_in, T_out: T_w_out },
    where,
  );
  return { m_w: trace.use(flowForDuty, { Q, c_m, Delta_T: rise }, where), T_w_out };
}
