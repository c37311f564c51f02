import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { subject } from "../subject.ts";

export default subject<{ T1: number; T2: number }>(({ T1, T2 }, trace) => ({
  dh_ideal:
    trace.use(enthalpy, { T: T2, w: 0 }, "second state") -
    trace.use(enthalpy, { T: T1, w: 0 }, "first state"),
}));
