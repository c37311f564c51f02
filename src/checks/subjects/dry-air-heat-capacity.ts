import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { heatCapacity } from "../../../calc/fluids/heat-capacity.ts";
import { heatCapacityRatio } from "../../../calc/fluids/heat-capacity-ratio.ts";
import { subject } from "../subject.ts";

export default subject<{ T: number }>(({ T }, trace) => {
  const c_p = trace.use(heatCapacity, { T, w: 0 }, "dry air");
  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  return { cp: c_p, kappa: trace.use(heatCapacityRatio, { c_p, R_m }, "dry air") };
});
