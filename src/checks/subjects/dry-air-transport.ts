import { conductivity } from "../../../calc/fluids/conductivity.ts";
import { conductivityDensityEffect } from "../../../calc/fluids/conductivity-density-effect.ts";
import { viscosity } from "../../../calc/fluids/viscosity.ts";
import { viscosityDensityEffect } from "../../../calc/fluids/viscosity-density-effect.ts";
import { subject } from "../subject.ts";

/** Molar mass of air in the paper, kg/mol. */
const MOLAR_MASS = 0.0289586;

/** Viscosity and conductivity at a density that is given, in kg/m³ or, as the paper prints it, in mol/m³. */
export default subject<{ T: number; rho: number } | { T: number; rho_mol: number }>((given, trace) => {
  const air = "dry air";
  const { T } = given;
  const rho = "rho" in given ? given.rho : given.rho_mol * MOLAR_MASS;
  return {
    mu: trace.use(viscosity, { T }, air) + trace.use(viscosityDensityEffect, { T, rho }, air),
    k: trace.use(conductivity, { T }, air) + trace.use(conductivityDensityEffect, { T, rho }, air),
  };
});
