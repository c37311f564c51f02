import { correctionFromTransferUnits } from "../../../calc/exchanger/correction-from-transfer-units.ts";
import { counterflowTransferUnits } from "../../../calc/exchanger/counterflow-transfer-units.ts";
import { shellCorrectionFactor } from "../../../calc/exchanger/shell-correction-factor.ts";
import { shellTransferUnits } from "../../../calc/exchanger/shell-transfer-units.ts";
import { temperatureEffectiveness } from "../../../calc/exchanger/temperature-effectiveness.ts";
import { subject } from "../subject.ts";

interface Given extends Record<string, number> {
  T_in: number;
  T_out: number;
  T_w_in: number;
  T_w_out: number;
}

/** One shell with two tube passes, from its four temperatures. */
export default subject<Given>(({ T_in, T_out, T_w_in, T_w_out }, trace) => {
  const P = trace.use(temperatureEffectiveness, { T_in, T_out, T_w_in }, "shell");
  const R = (T_w_out - T_w_in) / (T_in - T_out);
  const NTU = trace.use(shellTransferUnits, { P, R }, "shell");
  trace.use(counterflowTransferUnits, { P, R }, "counterflow");
  return {
    F: trace.use(shellCorrectionFactor, { P, R }, "shell"),
    F_by_transfer_units: trace.use(correctionFromTransferUnits, { P, R, NTU }, "shell"),
  };
});
