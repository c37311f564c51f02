import { arrangementOf } from "../../../calc/exchanger/arrangements.ts";
import { reach } from "../../../calc/exchanger/reach.ts";
import { transferUnitsNeeded } from "../../../calc/exchanger/transfer-units-needed.ts";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  kind: string;
  epsilon: number;
  C_star: number;
}

/** The air is the smaller stream. */
const ids: Readonly<Record<string, string>> = {
  counterflow: "counterflow",
  "parallel flow": "parallel-flow",
  "cross, both unmixed": "cross-unmixed",
  "cross, smaller stream mixed": "cross-air-mixed",
  "cross, larger stream mixed": "cross-one-row",
  "one shell, two tube passes": "shell-1-2",
};

export default subject<Given>(({ kind, epsilon, C_star }, trace) => {
  const arrangement = arrangementOf(ids[kind] ?? kind);
  const { P: most } = reach(arrangement, C_star);
  try {
    const NTU_min = transferUnitsNeeded(arrangement, { P: epsilon, R: C_star });
    trace.use(arrangement.effectiveness, { NTU: NTU_min, R: C_star }, "put back");
    return { reachable: "yes", most, NTU_min };
  } catch (error) {
    if (!(error instanceof DomainError) || error.limit?.value !== most) throw error;
    return { reachable: "no", most, NTU_min: null };
  }
});
