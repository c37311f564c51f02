import { compressibility } from "../../../calc/fluids/compressibility.ts";
import { conductivity } from "../../../calc/fluids/conductivity.ts";
import { conductivityDensityEffect } from "../../../calc/fluids/conductivity-density-effect.ts";
import { density } from "../../../calc/fluids/density.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { heatCapacity } from "../../../calc/fluids/heat-capacity.ts";
import { heatCapacityPressureEffect } from "../../../calc/fluids/heat-capacity-pressure-effect.ts";
import { secondVirial } from "../../../calc/fluids/second-virial.ts";
import { viscosity } from "../../../calc/fluids/viscosity.ts";
import { viscosityDensityEffect } from "../../../calc/fluids/viscosity-density-effect.ts";
import { subject } from "../subject.ts";

/** Dry air as a real gas: the ideal gas of the pages with their stated deviations put in. */
export default subject<{ T: number; p: number }>(({ T, p }, trace) => {
  const air = "dry air";
  const R_m = trace.use(gasConstant, { w: 0 }, air);
  const B = trace.use(secondVirial, { T }, air);
  const Z = trace.use(compressibility, { B, p, T }, air);
  const rho = trace.use(density, { p, R_m, T }, air) / Z;
  return {
    Z,
    rho,
    cp: trace.use(heatCapacity, { T, w: 0 }, air) + trace.use(heatCapacityPressureEffect, { T, p }, air),
    mu: trace.use(viscosity, { T }, air) + trace.use(viscosityDensityEffect, { T, rho }, air),
    k: trace.use(conductivity, { T }, air) + trace.use(conductivityDensityEffect, { T, rho }, air),
  };
});
