import { airBehindCore } from "../../../calc/exchanger/response/air-behind-core.ts";
import { coreAfterStep } from "../../../calc/exchanger/response/core-after-step.ts";
import { coreAtRest } from "../../../calc/exchanger/response/core-at-rest.ts";
import { timeConstant } from "../../../calc/exchanger/response/time-constant.ts";
import { wallExchange } from "../../../calc/exchanger/response/wall-exchange.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  M_core: number;
  c_core: number;
  UA_a: number;
  C_a: number;
  T_2: number;
  T_core_0: number;
  t: number;
}

export default subject<Given>(({ M_core, c_core, UA_a, C_a, T_2, T_core_0, t }, trace) => {
  const E_a = trace.use(wallExchange, { C: C_a, UA_side: UA_a }, "air");
  const tau = trace.use(timeConstant, { M_core, c_core, E_a, E_w: 0 }, "dry core");
  const T_core_end = trace.use(coreAtRest, { E_a, T_in: T_2, E_w: 0, T_w_in: T_core_0 }, "in the end");
  const T_core = trace.use(coreAfterStep, { T_core_0, T_core_end, t, tau }, "dry core");
  return { E_a, tau, T_3: trace.use(airBehindCore, { T_in: T_2, E_a, C_a, T_core }, "air") };
});
