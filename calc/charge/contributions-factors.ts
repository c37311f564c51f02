import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { logMeanRatio } from "./log-mean-ratio.ts";
import { partOfDrying } from "./part-of-drying.ts";
import { partOfPressure } from "./part-of-pressure.ts";
import { partOfTemperature } from "./part-of-temperature.ts";
import type { StagePath, StageWords } from "./stage.ts";

/** What happens to the air in one stage: compression raises pressure and temperature; a cooler takes from both, and dries. */
export type Change = "pressure" | "heating" | "cooling" | "loss" | "drying";

/**
 * The gain D_rho - 1 split among the changes of the air in one stage. A density ratio is a product of these changes, so their
 * logarithms add up; the logarithmic mean of D_rho and 1 turns logarithms into parts of the gain. Nothing depends on the order.
 */
export function factorsOf(
  { inlet, before, after }: StagePath,
  D_rho: SI,
  words: StageWords,
  trace: Trace,
): Readonly<Record<Change, SI>> {
  const L_D = trace.use(logMeanRatio, { D_rho }, "whole chain");
  const { compressor, cooler } = words;
  const isCooled = after !== before;
  const ifCooled = (part: () => SI): SI => (isCooled ? part() : 0);
  return {
    pressure: trace.use(partOfPressure, { L_D, p_out: before.p, p_in: inlet.p }, `${compressor}, pressure`),
    heating: trace.use(partOfTemperature, { L_D, T_in: inlet.T, T_out: before.T }, `${compressor}, heating`),
    cooling: ifCooled(() =>
      trace.use(partOfTemperature, { L_D, T_in: before.T, T_out: after.T }, `${cooler}, cooling`),
    ),
    loss: ifCooled(() =>
      trace.use(partOfPressure, { L_D, p_out: after.p, p_in: before.p }, `${cooler}, loss`),
    ),
    drying:
      after.R_m === before.R_m
        ? 0
        : trace.use(partOfDrying, { L_D, R_m_in: before.R_m, R_m_out: after.R_m }, `${cooler}, drying`),
  };
}
