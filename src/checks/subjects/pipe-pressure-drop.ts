import { boreArea } from "../../../calc/flow/bore-area.ts";
import { ductSpeed } from "../../../calc/flow/duct-speed.ts";
import { fittingLoss } from "../../../calc/flow/fitting-loss.ts";
import { pipeLoss } from "../../../calc/flow/pipe-loss.ts";
import { reynoldsNumber } from "../../../calc/flow/reynolds-number.ts";
import { turbulentFrictionFactor } from "../../../calc/flow/turbulent-friction-factor.ts";
import { subject } from "../subject.ts";

type Given = Record<"rho" | "mu" | "D" | "L" | "rough" | "K" | "m", number>;

export default subject<Given>(({ rho, mu, D, L, rough, K, m }, trace) => {
  const A = trace.use(boreArea, { d: D }, "pipe");
  const c = trace.use(ductSpeed, { m_a: m, rho, A }, "pipe");
  const Re = trace.use(reynoldsNumber, { rho, c, d: D, mu }, "pipe");
  const f = trace.use(turbulentFrictionFactor, { Re, k_s: rough, d: D }, "pipe");
  const wall = trace.use(pipeLoss, { f, L, d: D, rho, c }, "pipe");
  return { V: c, Re, f, dp: wall + trace.use(fittingLoss, { K, rho, c }, "fittings") };
});
