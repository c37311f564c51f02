import { arrangementOf } from "../../../calc/exchanger/arrangements.ts";
import { capacityRatio } from "../../../calc/exchanger/capacity-ratio.ts";
import { coolerOutletTemperature } from "../../../calc/exchanger/cooler-outlet-temperature.ts";
import { correctionFromTransferUnits } from "../../../calc/exchanger/correction-from-transfer-units.ts";
import { dutyByMeanDifference } from "../../../calc/exchanger/duty-by-mean-difference.ts";
import { dutyOfRate } from "../../../calc/exchanger/duty-of-rate.ts";
import { logMeanDifference } from "../../../calc/exchanger/log-mean-difference.ts";
import { onSmallerStream } from "../../../calc/exchanger/smaller-stream.ts";
import { temperatureGap } from "../../../calc/exchanger/temperature-gap.ts";
import { transferUnits } from "../../../calc/exchanger/transfer-units.ts";
import { waterOutletTemperature } from "../../../calc/exchanger/water-outlet-temperature.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  arrangement: string;
  UA: number;
  C_hot: number;
  C_cold: number;
  T_in: number;
  T_w_in: number;
}

/** What a known conductance does to two streams, by transfer units and again by the mean temperature difference. */
export default subject<Given>(({ arrangement, UA, C_hot, C_cold, T_in, T_w_in }, trace) => {
  const NTU = trace.use(transferUnits, { UA, C_a: C_hot }, "exchanger");
  const R = trace.use(capacityRatio, { C_a: C_hot, C_w: C_cold }, "exchanger");
  const P = trace.use(arrangementOf(arrangement).effectiveness, { NTU, R }, arrangement);
  const T_out = trace.use(coolerOutletTemperature, { T_in, P, T_w_in }, "hot stream");
  const T_w_out = trace.use(waterOutletTemperature, { T_in, T_w_in, P, R }, "cold stream");
  const Delta_T_1 = trace.use(temperatureGap, { T: T_in, T_w: T_w_out }, "hot end");
  const Delta_T_2 = trace.use(temperatureGap, { T: T_out, T_w: T_w_in }, "cold end");
  const Delta_T_lm = trace.use(logMeanDifference, { Delta_T_1, Delta_T_2 }, "exchanger");
  const F = trace.use(correctionFromTransferUnits, { P, R, NTU }, "exchanger");
  return {
    ...onSmallerStream({ P, R, NTU }, trace),
    Q: trace.use(dutyOfRate, { C: C_hot, T_in, T_out }, "hot stream"),
    Q_by_mean: trace.use(dutyByMeanDifference, { UA, F, Delta_T_lm }, "exchanger"),
  };
});
