import { waterCircuit } from "../../../calc/circuit/water-circuit.ts";
import { subject } from "../subject.ts";
import { branch } from "./water-branch.ts";

interface Given extends Record<string, number | string> {
  x: number;
  characteristic: "linear" | "equal-percentage";
}

/** Without vapour pressure and with full recovery nothing chokes. */
export default subject<Given>(({ x, characteristic }, trace) => {
  const found = waterCircuit(
    { ...branch, characteristic, F_L: 1, p_v_hot: 0, wanted: "flow", x_v: x },
    trace,
  );
  return { Q: 3600 * found.V_w };
});
