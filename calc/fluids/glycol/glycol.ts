import { constants } from "../../constants.ts";
import type { SI } from "../../quantity/domain-error.ts";
import type { Relation } from "../../relation/relation.ts";
import { plain, type Trace } from "../../relation/trace.ts";
import { atmosphericWaterDensity } from "../water/atmospheric-water-density.ts";
import { ethyleneGlycolConductivity } from "./ethylene-glycol-conductivity.ts";
import { ethyleneGlycolDensity } from "./ethylene-glycol-density.ts";
import { ethyleneGlycolFreezing } from "./ethylene-glycol-freezing.ts";
import { ethyleneGlycolHeatCapacity } from "./ethylene-glycol-heat-capacity.ts";
import { ethyleneGlycolViscosity } from "./ethylene-glycol-viscosity.ts";
import { glycolMassFraction } from "./glycol-mass-fraction.ts";
import { glycolVolumeFraction } from "./glycol-volume-fraction.ts";
import { propyleneGlycolConductivity } from "./propylene-glycol-conductivity.ts";
import { propyleneGlycolDensity } from "./propylene-glycol-density.ts";
import { propyleneGlycolFreezing } from "./propylene-glycol-freezing.ts";
import { propyleneGlycolHeatCapacity } from "./propylene-glycol-heat-capacity.ts";
import { propyleneGlycolViscosity } from "./propylene-glycol-viscosity.ts";

export type Glycol = "ethylene-glycol" | "propylene-glycol";

type Both<R> = Readonly<Record<Glycol, R>>;
type OfMixture = Both<Relation<"T" | "x_g">>;

/* One record for each property, so that a page loads only those that it uses. */

export const glycolDensities: OfMixture = {
  "ethylene-glycol": ethyleneGlycolDensity,
  "propylene-glycol": propyleneGlycolDensity,
};
export const glycolHeatCapacities: OfMixture = {
  "ethylene-glycol": ethyleneGlycolHeatCapacity,
  "propylene-glycol": propyleneGlycolHeatCapacity,
};
export const glycolConductivities: OfMixture = {
  "ethylene-glycol": ethyleneGlycolConductivity,
  "propylene-glycol": propyleneGlycolConductivity,
};
export const glycolViscosities: OfMixture = {
  "ethylene-glycol": ethyleneGlycolViscosity,
  "propylene-glycol": propyleneGlycolViscosity,
};
export const glycolFreezings: Both<Relation<"x_g">> = {
  "ethylene-glycol": ethyleneGlycolFreezing,
  "propylene-glycol": propyleneGlycolFreezing,
};

/** Shops mix at about this temperature, K: the densities of both liquids are taken there. */
const MIXED_AT = 293.15;

const densitiesWhenMixed = (glycol: Glycol, trace: Trace) => ({
  rho_g: (glycol === "ethylene-glycol" ? constants.rho_EG : constants.rho_PG).value,
  rho_w: trace.use(atmosphericWaterDensity, { T: MIXED_AT }, "water, as it is mixed"),
});

/**
 * Mass fraction of a glycol that was mixed by volume, both liquids at 20 °C; phi_g is the volume of glycol over both.
 *
 * @example massFractionOf("ethylene-glycol", 0.5) // 0.527
 */
export const massFractionOf = (glycol: Glycol, phi_g: SI, trace: Trace = plain): SI =>
  trace.use(glycolMassFraction, { phi_g, ...densitiesWhenMixed(glycol, trace) }, "coolant");

/**
 * Volume of glycol over both volumes that gives a mass fraction x_g, both liquids at 20 °C.
 *
 * @example volumeFractionOf("ethylene-glycol", 0.5) // 0.473
 */
export const volumeFractionOf = (glycol: Glycol, x_g: SI, trace: Trace = plain): SI =>
  trace.use(glycolVolumeFraction, { x_g, ...densitiesWhenMixed(glycol, trace) }, "coolant");
