import { seawaterConductivity } from "../../../calc/fluids/seawater-conductivity.ts";
import { seawaterViscosity } from "../../../calc/fluids/seawater-viscosity.ts";
import { subject } from "../subject.ts";

/** Neither correlation knows a pressure. */
export default subject<{ SA: number; T: number; p: number }>(({ SA, T }, trace) => ({
  mu: trace.use(seawaterViscosity, { T, S: SA / 1000 }, "seawater"),
  k: trace.use(seawaterConductivity, { T, S: SA / 1000 }, "seawater"),
}));
