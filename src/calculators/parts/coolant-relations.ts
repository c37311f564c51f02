import { ethyleneGlycolConductivity } from "../../../calc/fluids/glycol/ethylene-glycol-conductivity.ts";
import { ethyleneGlycolDensity } from "../../../calc/fluids/glycol/ethylene-glycol-density.ts";
import { ethyleneGlycolFreezing } from "../../../calc/fluids/glycol/ethylene-glycol-freezing.ts";
import { ethyleneGlycolHeatCapacity } from "../../../calc/fluids/glycol/ethylene-glycol-heat-capacity.ts";
import { ethyleneGlycolViscosity } from "../../../calc/fluids/glycol/ethylene-glycol-viscosity.ts";
import { glycolMassFraction } from "../../../calc/fluids/glycol/glycol-mass-fraction.ts";
import { propyleneGlycolConductivity } from "../../../calc/fluids/glycol/propylene-glycol-conductivity.ts";
import { propyleneGlycolDensity } from "../../../calc/fluids/glycol/propylene-glycol-density.ts";
import { propyleneGlycolFreezing } from "../../../calc/fluids/glycol/propylene-glycol-freezing.ts";
import { propyleneGlycolHeatCapacity } from "../../../calc/fluids/glycol/propylene-glycol-heat-capacity.ts";
import { propyleneGlycolViscosity } from "../../../calc/fluids/glycol/propylene-glycol-viscosity.ts";
import { seawaterConductivity } from "../../../calc/fluids/seawater-conductivity.ts";
import { seawaterDensity } from "../../../calc/fluids/seawater-density.ts";
import { seawaterFreezing } from "../../../calc/fluids/seawater-freezing.ts";
import { seawaterHeatCapacity } from "../../../calc/fluids/seawater-heat-capacity.ts";
import { seawaterViscosity } from "../../../calc/fluids/seawater-viscosity.ts";
import { atmosphericWaterDensity } from "../../../calc/fluids/water/atmospheric-water-density.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";

/** What a film of seawater or of a mixture depends on, and where each freezes; the glycol by mass or by volume. */
export const mixtureRelations: readonly AnyRelation[] = [
  ethyleneGlycolConductivity,
  ethyleneGlycolDensity,
  ethyleneGlycolFreezing,
  ethyleneGlycolHeatCapacity,
  ethyleneGlycolViscosity,
  propyleneGlycolConductivity,
  propyleneGlycolDensity,
  propyleneGlycolFreezing,
  propyleneGlycolHeatCapacity,
  propyleneGlycolViscosity,
  glycolMassFraction,
  atmosphericWaterDensity,
  seawaterConductivity,
  seawaterDensity,
  seawaterFreezing,
  seawaterHeatCapacity,
  seawaterViscosity,
];
