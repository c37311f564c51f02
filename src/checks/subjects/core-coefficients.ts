import { coreEntranceCoefficient } from "../../../calc/flow/core-entrance-coefficient.ts";
import { coreExitCoefficient } from "../../../calc/flow/core-exit-coefficient.ts";
import { coreJetContraction } from "../../../calc/flow/core-jet-contraction.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  sigma: number;
  K_d: number;
}

/** Entrance and exit of a core, from how much of the face is free and the momentum factor. */
export default subject<Given>(({ sigma, K_d }, trace) => {
  const C_c = trace.use(coreJetContraction, { sigma }, "core");
  return {
    K_c: trace.use(coreEntranceCoefficient, { C_c, K_d }, "core"),
    K_e: trace.use(coreExitCoefficient, { K_d, sigma }, "core"),
  };
});
