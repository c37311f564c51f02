import type { SI } from "../../quantity/domain-error.ts";
import type { Relation } from "../../relation/relation.ts";
import { plain, type Trace } from "../../relation/trace.ts";
import { saturationOverWater } from "../saturation-over-water.ts";
import { atmosphericWaterDensity } from "./atmospheric-water-density.ts";
import { atmosphericWaterEnthalpy } from "./atmospheric-water-enthalpy.ts";
import { ATMOSPHERIC_TO } from "./atmospheric-water-range.ts";
import { compressedWaterDensity } from "./compressed-water-density.ts";
import { compressedWaterEnthalpy } from "./compressed-water-enthalpy.ts";

/** Temperature in K and pressure in Pa absolute of liquid water. */
export interface WaterGiven {
  readonly T: SI;
  readonly p: SI;
}

/**
 * Up to this pressure, about 0.143 MPa, water is described by the equations for 0.1 MPa. It is the one under which water
 * boils where those equations end, so at any one pressure all liquid water has the same description, and differences of
 * enthalpy never cross from one to the other.
 */
export const ATMOSPHERIC_UP_TO = saturationOverWater.compute({ T: ATMOSPHERIC_TO });

/** Past the end of the equations, where water boils anyway, those for water under pressure lead a search on. */
export const isAtmospheric = ({ T, p }: WaterGiven) => p <= ATMOSPHERIC_UP_TO && T <= ATMOSPHERIC_TO;

/** One of two descriptions of a property, by the pressure. */
export const choose =
  (atmospheric: Relation<"T">, compressed: Relation<"T" | "p">) =>
  (state: WaterGiven, trace: Trace = plain, where = "water"): SI =>
    isAtmospheric(state)
      ? trace.use(atmospheric, { T: state.T }, where)
      : trace.use(compressed, { T: state.T, p: state.p }, where);

/*
 * Single properties for solvers: T in K, p in Pa absolute, liquid or a little past boiling. They refuse nothing; a range
 * that is left becomes a note. Enthalpies are to be subtracted at one pressure.
 */

/** Density, kg/m³. */
export const waterDensity = choose(atmosphericWaterDensity, compressedWaterDensity);
/** Enthalpy from the liquid at the triple point, J/kg. */
export const waterEnthalpy = choose(atmosphericWaterEnthalpy, compressedWaterEnthalpy);
