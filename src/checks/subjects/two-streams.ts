import { dutyOfRate } from "../../../calc/exchanger/duty-of-rate.ts";
import { heatBalance } from "../../../calc/exchanger/heat-balance.ts";
import { logMeanDifference } from "../../../calc/exchanger/log-mean-difference.ts";
import { temperatureGap } from "../../../calc/exchanger/temperature-gap.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  C_hot: number;
  C_cold: number;
  T_in: number;
  T_out: number;
  T_w_in: number;
  T_w_out_read: number;
}

/** Two streams in counterflow, three of whose temperatures are known; and the balance with the fourth as it was read. */
export default subject<Given>(({ C_hot, C_cold, T_in, T_out, T_w_in, T_w_out_read }, trace) => {
  const Q = trace.use(dutyOfRate, { C: C_hot, T_in, T_out }, "hot stream");
  const T_w_out = T_w_in + Q / C_cold;
  const Delta_T_1 = trace.use(temperatureGap, { T: T_in, T_w: T_w_out }, "hot end");
  const Delta_T_2 = trace.use(temperatureGap, { T: T_out, T_w: T_w_in }, "cold end");
  const Q_w = trace.use(dutyOfRate, { C: C_cold, T_in: T_w_out_read, T_out: T_w_in }, "cold stream");
  return {
    Q,
    T_w_out,
    Delta_T_lm: trace.use(logMeanDifference, { Delta_T_1, Delta_T_2 }, "exchanger"),
    delta_Q: trace.use(heatBalance, { Q_w, Q_a: Q }, "exchanger"),
  };
});
