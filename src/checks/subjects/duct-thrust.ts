import { bendThrust } from "../../../calc/flow/bend-thrust.ts";
import { boreArea } from "../../../calc/flow/bore-area.ts";
import { closedEndThrust } from "../../../calc/flow/closed-end-thrust.ts";
import { subject } from "../subject.ts";

type Given = Record<"d" | "p_g" | "m_a" | "c" | "theta", number>;

export default subject<Given>(({ d, p_g, m_a, c, theta }, trace) => {
  const A = trace.use(boreArea, { d }, "pipe");
  return {
    closed: trace.use(closedEndThrust, { p_g, A }, "closed end"),
    bend: trace.use(bendThrust, { p_g, A, m_a, c, theta: (theta * Math.PI) / 180 }, "bend"),
  };
});
