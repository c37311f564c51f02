import { density } from "../../../calc/fluids/density.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { heatCapacity } from "../../../calc/fluids/heat-capacity.ts";
import { subject } from "../subject.ts";

/** Dry air as the pages compute it, without any correction. */
export default subject<{ T: number; p: number }>(({ T, p }, trace) => {
  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  return {
    rho: trace.use(density, { p, R_m, T }, "dry air"),
    cp: trace.use(heatCapacity, { T, w: 0 }, "dry air"),
  };
});
