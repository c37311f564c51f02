import { affinityFlow } from "../../../calc/circuit/pump/affinity-flow.ts";
import { affinityPower } from "../../../calc/circuit/pump/affinity-power.ts";
import { pumpCurve } from "../../../calc/circuit/pump/pump-curve.ts";
import { subject } from "../subject.ts";
import { branch } from "./water-branch.ts";

type Given = Record<"Q" | "n" | "n_ref" | "W_ref", number>;

export default subject<Given>(({ Q, n, n_ref, W_ref }, trace) => {
  const V_w = Q / 3600;
  const V_ref = trace.use(affinityFlow, { V_ref: V_w, n: n_ref, n_ref: n }, "pump, back");
  return {
    Q_scaled: 3600 * trace.use(affinityFlow, { V_ref, n, n_ref }, "pump"),
    head: pumpCurve({ points: branch.points, n, n_ref }).head(V_w, trace),
    power: trace.use(affinityPower, { W_ref, n, n_ref }, "pump"),
  };
});
