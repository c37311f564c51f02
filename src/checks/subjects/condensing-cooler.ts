import { dryAirFlow } from "../../../calc/engine/dry-air-flow.ts";
import { condensateFlow } from "../../../calc/exchanger/condensate-flow.ts";
import { duty } from "../../../calc/exchanger/duty.ts";
import { latentDuty } from "../../../calc/exchanger/latent-duty.ts";
import { sensibleDuty } from "../../../calc/exchanger/sensible-duty.ts";
import { enhancementFactor } from "../../../calc/fluids/enhancement-factor.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { latentHeat } from "../../../calc/fluids/latent-heat.ts";
import { saturatedHumidityRatio } from "../../../calc/fluids/saturated-humidity-ratio.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  m: number;
  w1: number;
  T2: number;
  T3: number;
  p: number;
}

/** A cooler whose charge leaves saturated; the sensible part carries all the vapour that came in. */
export default subject<Given>(({ m, w1, T2, T3, p }, trace) => {
  const [inlet, outlet] = ["cooler inlet", "cooler outlet"];
  const p_ws = trace.use(saturationPressure, { T: T3 }, outlet);
  const f_e = trace.use(enhancementFactor, { T: T3, p }, outlet);
  const w_s = trace.use(saturatedHumidityRatio, { f_e, p_ws, p }, outlet);
  const m_da = trace.use(dryAirFlow, { m_a: m, w: w1 }, inlet);
  const m_c = trace.use(condensateFlow, { m_da, w_in: w1, w_out: w_s }, outlet);
  const h_in = trace.use(enthalpy, { T: T2, w: w1 }, inlet);
  const h_out = trace.use(enthalpy, { T: T3, w: w1 }, outlet);
  const Q_s = trace.use(sensibleDuty, { m_a: m, h_in, h_out }, "cooler");
  const Q_l = trace.use(latentDuty, { m_c, h_fg: trace.use(latentHeat, { T: T3 }, outlet) }, "cooler");
  return { w_s, m_c, Q_s, Q_l, Q: trace.use(duty, { Q_s, Q_l }, "cooler") };
});
