import { compressedWaterConductivity } from "../../../calc/fluids/water/compressed-water-conductivity.ts";
import { compressedWaterDensity } from "../../../calc/fluids/water/compressed-water-density.ts";
import { compressedWaterEnthalpy } from "../../../calc/fluids/water/compressed-water-enthalpy.ts";
import { compressedWaterEntropy } from "../../../calc/fluids/water/compressed-water-entropy.ts";
import { compressedWaterHeatCapacity } from "../../../calc/fluids/water/compressed-water-heat-capacity.ts";
import { compressedWaterSpeedOfSound } from "../../../calc/fluids/water/compressed-water-speed-of-sound.ts";
import { waterViscosity } from "../../../calc/fluids/water/water-viscosity.ts";
import { subject } from "../subject.ts";

/** The industrial formulation at any pressure, atmospheric ones included. */
export default subject<{ T: number; p: number }>(({ T, p }, trace) => {
  const rho = trace.use(compressedWaterDensity, { T, p }, "water");
  return {
    rho,
    cp: trace.use(compressedWaterHeatCapacity, { T, p }, "water"),
    h: trace.use(compressedWaterEnthalpy, { T, p }, "water"),
    s: trace.use(compressedWaterEntropy, { T, p }, "water"),
    w: trace.use(compressedWaterSpeedOfSound, { T, p }, "water"),
    mu: trace.use(waterViscosity, { T, rho }, "water"),
    k: trace.use(compressedWaterConductivity, { T, p }, "water"),
  };
});
