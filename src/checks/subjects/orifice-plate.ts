import { orificePlate } from "../../../calc/circuit/orifice/orifice-plate.ts";
import { subject } from "../subject.ts";
import { type OrificeCase, plateOfCase } from "./orifice-plate-backwards.ts";

export default subject<OrificeCase>((given, trace) => {
  const { m, Re, C_D, epsilon_e } = orificePlate(
    { ...plateOfCase(given), wanted: "flow", d: given.d, Delta_p: given.dp },
    trace,
  );
  return { m, Re, C: C_D, eps: epsilon_e };
});
