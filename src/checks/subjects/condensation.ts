import { condensateFlow } from "../../../calc/exchanger/condensate-flow.ts";
import { dewPoint } from "../../../calc/fluids/dew-point.ts";
import { humidityRatio } from "../../../calc/fluids/humidity-ratio.ts";
import { relativeHumidity } from "../../../calc/fluids/relative-humidity.ts";
import { saturatedHumidityRatio } from "../../../calc/fluids/saturated-humidity-ratio.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { vapourPressure } from "../../../calc/fluids/vapour-pressure.ts";
import { vapourPressureFromHumidityRatio } from "../../../calc/fluids/vapour-pressure-from-humidity-ratio.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  T1: number;
  RH1: number;
  p1: number;
  T2: number;
  p2: number;
}

/** Compression and cooling without the enhancement factor (f_e = 1), for 1 kg of dry air. */
export default subject<Given>(({ T1, RH1, p1, T2, p2 }, trace) => {
  const [inlet, outlet] = ["inlet", "after the cooler"];
  const p_v1 = trace.use(
    vapourPressure,
    { varphi: RH1, f_e: 1, p_ws: trace.use(saturationPressure, { T: T1 }, inlet) },
    inlet,
  );
  const W1 = trace.use(humidityRatio, { p_v: p_v1, p: p1 }, inlet);
  const p_ws = trace.use(saturationPressure, { T: T2 }, outlet);
  const Ws2 = trace.use(saturatedHumidityRatio, { f_e: 1, p_ws, p: p2 }, outlet);
  const W2 = Math.min(W1, Ws2);
  const p_vBefore = trace.use(vapourPressureFromHumidityRatio, { w: W1, p: p2 }, "before condensation");
  const p_v2 = trace.use(vapourPressureFromHumidityRatio, { w: W2, p: p2 }, outlet);
  return {
    W1,
    Ws2,
    Tdp2: trace.use(dewPoint, { p_v: p_vBefore, f_e: 1 }, "before condensation"),
    condensate: trace.use(condensateFlow, { m_da: 1, w_in: W1, w_out: W2 }, outlet),
    RH2: trace.use(relativeHumidity, { p_v: p_v2, f_e: 1, p_ws }, outlet),
  };
});
