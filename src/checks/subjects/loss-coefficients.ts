import { conicalContractionLoss } from "../../../calc/flow/conical-contraction-loss.ts";
import { contractionJet } from "../../../calc/flow/contraction-jet.ts";
import { diameterRatio } from "../../../calc/flow/diameter-ratio.ts";
import { diffuserLoss } from "../../../calc/flow/diffuser-loss.ts";
import {
  bendCoefficient,
  type DuctParts,
  inletCoefficient,
  outletCoefficient,
  tabledBendCoefficient,
} from "../../../calc/flow/duct-coefficients.ts";
import { reducerLoss } from "../../../calc/flow/reducer-loss.ts";
import type { Trace } from "../../../calc/relation/trace.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  kind: string;
  D: number;
  D1: number;
  D2: number;
  angle: number;
  rc: number;
  fd: number;
}

const smooth = ({ D, angle, rc }: Given): DuctParts["bend"] => ({
  kind: "smooth",
  theta: radians(angle),
  R_b: rc / D,
});
const mitre = ({ angle }: Given): DuctParts["bend"] => ({ kind: "mitre", theta: radians(angle) });
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** By the names of the file. Friction factor and bore do not matter where the formula has none. */
const kinds: Readonly<Record<string, (given: Given, trace: Trace) => number | undefined>> = {
  expansion_sudden: ({ D1, D2 }, trace) => outletCoefficient({ kind: "step", d_l: D2 }, D1, trace),
  contraction_sharp: ({ D1, D2 }, trace) => inletCoefficient({ kind: "step", d_l: D1 }, D2, 0, trace),
  bend: (given, trace) => bendCoefficient(smooth(given), given.fd, trace),
  mitre: (given, trace) => bendCoefficient(mitre(given), 0, trace),
  bend_table: (given, trace) => tabledBendCoefficient(smooth(given), given.D, trace),
  mitre_table: (given, trace) => tabledBendCoefficient(mitre(given), given.D, trace),
  diffuser: ({ D1, D2, angle }, trace) => {
    const beta_d = trace.use(diameterRatio, { d: D1, d_l: D2 }, "diffuser");
    return trace.use(diffuserLoss, { theta_c: radians(angle), beta_d }, "diffuser");
  },
  contraction_conical: ({ D1, D2, angle, fd }, trace) => {
    const theta_c = radians(angle);
    const beta_d = trace.use(diameterRatio, { d: D2, d_l: D1 }, "contraction");
    const lambda_j = trace.use(contractionJet, { theta_c, beta_d }, "contraction");
    return trace.use(conicalContractionLoss, { f: fd, theta_c, beta_d, lambda_j }, "contraction");
  },
  reducer: ({ D1, D2, angle }, trace) => {
    const beta_d = trace.use(diameterRatio, { d: D2, d_l: D1 }, "contraction");
    return trace.use(reducerLoss, { theta_c: radians(angle), beta_d }, "contraction");
  },
  entrance_rounded: ({ D, rc }, trace) => inletCoefficient({ kind: "entrance", R_l: rc / D }, D, 0, trace),
};

export default subject<Given>((given, trace) => ({ K: kinds[given.kind]?.(given, trace) ?? null }));
