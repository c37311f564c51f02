import { seawaterHeatCapacity } from "../../../calc/fluids/seawater-heat-capacity.ts";
import { subject } from "../subject.ts";

/** The correlation knows no pressure. */
export default subject<{ SA: number; T: number; p: number }>(({ SA, T }, trace) => ({
  cp: trace.use(seawaterHeatCapacity, { T, S: SA / 1000 }, "seawater"),
}));
