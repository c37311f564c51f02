import { constants } from "../../constants.ts";
import { accept, refuse } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { plain, type Trace } from "../../relation/trace.ts";
import { atmosphericWaterConductivity } from "./atmospheric-water-conductivity.ts";
import { atmosphericWaterHeatCapacity } from "./atmospheric-water-heat-capacity.ts";
import { atmosphericWaterViscosity } from "./atmospheric-water-viscosity.ts";
import { boilingMargin } from "./boiling-margin.ts";
import { boilingTemperature } from "./boiling-temperature.ts";
import { compressedWaterConductivity } from "./compressed-water-conductivity.ts";
import { compressedWaterEnthalpy } from "./compressed-water-enthalpy.ts";
import { compressedWaterEntropy } from "./compressed-water-entropy.ts";
import { compressedWaterHeatCapacity } from "./compressed-water-heat-capacity.ts";
import { compressedWaterSpeedOfSound } from "./compressed-water-speed-of-sound.ts";
import { choose, isAtmospheric, type WaterGiven, waterDensity, waterEnthalpy } from "./liquid-water.ts";
import { steamEnthalpy } from "./steam-enthalpy.ts";
import { vaporisationHeat } from "./vaporisation-heat.ts";
import { waterViscosity } from "./water-viscosity.ts";

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

/** Heat capacity at constant pressure, J/(kg K), as `waterDensity` gives the density. */
export const waterHeatCapacity = choose(atmosphericWaterHeatCapacity, compressedWaterHeatCapacity);
/** Thermal conductivity, W/(m K), alike. */
export const liquidConductivity = choose(atmosphericWaterConductivity, compressedWaterConductivity);

/** Viscosity, Pa s, alike. */
export const liquidViscosity = (state: WaterGiven, trace: Trace = plain, where = "water"): SI =>
  isAtmospheric(state)
    ? trace.use(atmosphericWaterViscosity, { T: state.T }, where)
    : trace.use(waterViscosity, { T: state.T, rho: waterDensity(state) }, where);

/** Saturated steam is described up to here, Pa: 622.9 K. */
const MOST_PRESSURE = 16.5e6;

/** Throws a DomainError for T or p where there is no liquid water, and gives its boiling temperature in K. */
export function acceptLiquid({ T, p }: WaterGiven, trace: Trace, where: string): SI {
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
    mu: liquidViscosity(given, trace, where),
    k: liquidConductivity(given, trace, where),
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
