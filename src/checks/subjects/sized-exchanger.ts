import { arrangementOf } from "../../../calc/exchanger/arrangements.ts";
import { capacityRatio } from "../../../calc/exchanger/capacity-ratio.ts";
import { conductance } from "../../../calc/exchanger/conductance.ts";
import { crossUnmixedApproximation } from "../../../calc/exchanger/effectiveness/cross-unmixed-approximation.ts";
import { onSmallerStream } from "../../../calc/exchanger/smaller-stream.ts";
import { temperatureEffectiveness } from "../../../calc/exchanger/temperature-effectiveness.ts";
import { transferUnitsNeeded } from "../../../calc/exchanger/transfer-units-needed.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number | string> {
  arrangement: string;
  C_cold: number;
  T_in: number;
  T_out: number;
  T_w_in: number;
  T_w_out: number;
}

/** What would stand in its place, if the approximation were an arrangement. */
const approximation = {
  ...arrangementOf("cross-unmixed"),
  id: "cross-unmixed-approximation",
  effectiveness: crossUnmixedApproximation,
};

/** The conductance between two streams whose four temperatures are known, and one of the capacity rates. */
export default subject<Given>(({ arrangement, C_cold, T_in, T_out, T_w_in, T_w_out }, trace) => {
  const C_a = (C_cold * (T_w_out - T_w_in)) / (T_in - T_out);
  const R = trace.use(capacityRatio, { C_a, C_w: C_cold }, "exchanger");
  const P = trace.use(temperatureEffectiveness, { T_in, T_out, T_w_in }, "exchanger");
  const found = arrangement === approximation.id ? approximation : arrangementOf(arrangement);
  const NTU = transferUnitsNeeded(found, { P, R });
  trace.use(found.effectiveness, { NTU, R }, "put back");
  return {
    ...onSmallerStream({ P, R, NTU }, trace),
    UA: trace.use(conductance, { NTU, C_a }, "exchanger"),
  };
});
