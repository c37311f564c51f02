import { constants } from "../../constants.ts";
import { accept, refuse } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import type { Relation } from "../../relation/relation.ts";
import { plain, type Trace } from "../../relation/trace.ts";
import { saturationOverWater } from "../saturation-over-water.ts";
import { atmosphericWaterConductivity } from "./atmospheric-water-conductivity.ts";
import { atmosphericWaterDensity } from "./atmospheric-water-density.ts";
import { atmosphericWaterEnthalpy } from "./atmospheric-water-enthalpy.ts";
import { atmosphericWaterHeatCapacity } from "./atmospheric-water-heat-capacity.ts";
import { ATMOSPHERIC_TO } from "./atmospheric-water-range.ts";
import { atmosphericWaterViscosity } from "./atmospheric-water-viscosity.ts";
import { boilingMargin } from "./boiling-margin.ts";
import { boilingTemperature } from "./boiling-temperature.ts";
import { compressedWaterConductivity } from "./compressed-water-conductivity.ts";
import { compressedWaterDensity } from "./compressed-water-density.ts";
import { compressedWaterEnthalpy } from "./compressed-water-enthalpy.ts";
import { compressedWaterEntropy } from "./compressed-water-entropy.ts";
import { compressedWaterHeatCapacity } from "./compressed-water-heat-capacity.ts";
import { compressedWaterSpeedOfSound } from "./compressed-water-speed-of-sound.ts";
import { steamEnthalpy } from "./steam-enthalpy.ts";
import { vaporisationHeat } from "./vaporisation-heat.ts";
import { waterViscosity } from "./water-viscosity.ts";

/** Temperature in K and pressure in Pa absolute of liquid water. */
export interface WaterGiven {
  readonly T: SI;
  readonly p: SI;
}

/** kg/m³, J/(kg K), J/kg, Pa s, W/(m K), J/(kg K), m/s, K, K, J/kg at the boiling temperature. */
export interface WaterState {
  readonly rho: SI;
  readonly c_p: SI;
  readonly h: SI;
  readonly mu: SI;
  readonly k: SI;
  readonly s: SI;
  readonly a: SI;
  readonly T_sat: SI;
  readonly Delta_T_sat: SI;
  readonly h_fg: SI;
}

/**
 * Up to this pressure, about 0.143 MPa, water is described by the equations for 0.1 MPa. It is the one under which water
 * boils where those equations end, so at any one pressure all liquid water has the same description, and differences of
 * enthalpy never cross from one to the other.
 */
export const ATMOSPHERIC_UP_TO = saturationOverWater.compute({ T: ATMOSPHERIC_TO });

/** Past the end of the equations, where water boils anyway, those for water under pressure lead a search on. */
const isAtmospheric = ({ T, p }: WaterGiven) => p <= ATMOSPHERIC_UP_TO && T <= ATMOSPHERIC_TO;

const choose =
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
/** Heat capacity at constant pressure, J/(kg K). */
export const waterHeatCapacity = choose(atmosphericWaterHeatCapacity, compressedWaterHeatCapacity);
/** Enthalpy from the liquid at the triple point, J/kg. */
export const waterEnthalpy = choose(atmosphericWaterEnthalpy, compressedWaterEnthalpy);
const conductivity = choose(atmosphericWaterConductivity, compressedWaterConductivity);

/** Differences of temperature below this lose digits in the difference of enthalpies, K. */
const SMALL = 1e-3;

/**
 * Mean heat capacity of water between two temperatures in K at p in Pa absolute, J/(kg K): the difference of enthalpies
 * over that of temperatures, and where these are equal, the heat capacity there.
 *
 * @example meanWaterHeatCapacity(298.15, 313.15, 2e5) // 4179.41 J/(kg K)
 */
export function meanWaterHeatCapacity(T_1: SI, T_2: SI, p: SI): SI {
  if (Math.abs(T_2 - T_1) < SMALL) return waterHeatCapacity({ T: (T_1 + T_2) / 2, p });
  return (waterEnthalpy({ T: T_2, p }) - waterEnthalpy({ T: T_1, p })) / (T_2 - T_1);
}

/** Saturated steam is described up to here, Pa: 622.9 K. */
const MOST_PRESSURE = 16.5e6;

/** Throws a DomainError for T or p where there is no liquid water, and gives its boiling temperature in K. */
function acceptLiquid({ T, p }: WaterGiven, trace: Trace, where: string): SI {
  accept("p", "The water pressure", p, {
    kind: "pressure",
    atLeast: constants.p_t.value,
    atMost: MOST_PRESSURE,
  });
  // Supercooled water stays liquid only until something touches it, and in a cooler everything does.
  refuse(
    !(T >= constants.T_C.value),
    "T",
    "Water freezes below the bound, and what is computed here is liquid water.",
    { value: constants.T_C.value, kind: "temperature" },
  );
  const T_sat = trace.use(boilingTemperature, { p }, where);
  refuse(
    T > T_sat,
    "T",
    "At this pressure water boils above the bound, and what is computed here is liquid water. A lower temperature or a higher pressure is needed.",
    { value: T_sat, kind: "temperature" },
  );
  return T_sat;
}

/**
 * The state of liquid water at a temperature and a pressure, and how far it is from boiling.
 *
 * From 0 °C to boiling, 611.657 Pa to 16.5 MPa. Near atmospheric pressure, up to about 0.143 MPa, by IAPWS SR6-08, under
 * more pressure by IAPWS-IF97 with the viscosity of R12-08 and the conductivity of R15-11; entropy, speed of sound and
 * heat of vaporisation by IAPWS-IF97 throughout. Where one hands over to the other the heat capacity steps by up to
 * 0.06 %, all else by less. Throws a DomainError for p or T where there is no liquid water.
 *
 * @example waterState({ T: 363.15, p: 3e5 }).rho // 965.40937 kg/m³
 */
export const waterState = (given: WaterGiven, trace: Trace = plain, where = "water"): WaterState => {
  const { T, p } = given;
  const T_sat = acceptLiquid(given, trace, where);
  const boiling = `${where}, at its boiling temperature`;
  const rho = waterDensity(given, trace, where);
  return {
    rho,
    c_p: waterHeatCapacity(given, trace, where),
    h: waterEnthalpy(given, trace, where),
    mu: isAtmospheric(given)
      ? trace.use(atmosphericWaterViscosity, { T }, where)
      : trace.use(waterViscosity, { T, rho }, where),
    k: conductivity(given, trace, where),
    s: trace.use(compressedWaterEntropy, { T, p }, where),
    a: trace.use(compressedWaterSpeedOfSound, { T, p }, where),
    T_sat,
    Delta_T_sat: trace.use(boilingMargin, { T_sat, T }, where),
    h_fg: trace.use(
      vaporisationHeat,
      {
        h_g: trace.use(steamEnthalpy, { T: T_sat, p }, boiling),
        h_l: trace.use(compressedWaterEnthalpy, { T: T_sat, p }, boiling),
      },
      boiling,
    ),
  };
};
