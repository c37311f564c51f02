import { ledBackFlow } from "../../../calc/exchanger/led-back-flow.ts";
import { mixedInFlow } from "../../../calc/exchanger/mixed-in-flow.ts";
import { subject } from "../subject.ts";

export default subject<{ m: number; T_warm: number; T_w_in: number; T_cold: number }>((given, trace) => {
  const m_fresh = trace.use(mixedInFlow, given, "mixing valve");
  return { m_fresh, m_back: trace.use(ledBackFlow, { m: given.m, m_fresh }, "mixing valve") };
});
