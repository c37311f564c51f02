import { atmosphericWaterConductivity } from "../../../calc/fluids/water/atmospheric-water-conductivity.ts";
import { atmosphericWaterDensity } from "../../../calc/fluids/water/atmospheric-water-density.ts";
import { atmosphericWaterEnthalpy } from "../../../calc/fluids/water/atmospheric-water-enthalpy.ts";
import { atmosphericWaterHeatCapacity } from "../../../calc/fluids/water/atmospheric-water-heat-capacity.ts";
import { atmosphericWaterViscosity } from "../../../calc/fluids/water/atmospheric-water-viscosity.ts";
import { subject } from "../subject.ts";

export default subject<{ T: number }>(({ T }, trace) => ({
  rho: trace.use(atmosphericWaterDensity, { T }, "water"),
  cp: trace.use(atmosphericWaterHeatCapacity, { T }, "water"),
  h: trace.use(atmosphericWaterEnthalpy, { T }, "water"),
  mu: trace.use(atmosphericWaterViscosity, { T }, "water"),
  k: trace.use(atmosphericWaterConductivity, { T }, "water"),
}));
