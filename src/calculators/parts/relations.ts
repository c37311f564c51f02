import { altimeterAltitude } from "../../../calc/atmosphere/altimeter-altitude.ts";
import { barometerDeviation } from "../../../calc/atmosphere/barometer-deviation.ts";
import { geopotentialAltitude } from "../../../calc/atmosphere/geopotential-altitude.ts";
import { pressureAltitude } from "../../../calc/atmosphere/pressure-altitude.ts";
import { seaLevelAltitude } from "../../../calc/atmosphere/sea-level-altitude.ts";
import { standardPressure } from "../../../calc/atmosphere/standard-pressure.ts";
import { standardTemperature } from "../../../calc/atmosphere/standard-temperature.ts";
import { actualEnthalpy } from "../../../calc/compression/actual-enthalpy.ts";
import { constantHeatCapacity } from "../../../calc/compression/constant-heat-capacity.ts";
import { constantIsentropicEfficiency } from "../../../calc/compression/constant-isentropic-efficiency.ts";
import { constantIsentropicTemperature } from "../../../calc/compression/constant-isentropic-temperature.ts";
import { constantOutletTemperature } from "../../../calc/compression/constant-outlet-temperature.ts";
import { constantPolytropicEfficiency } from "../../../calc/compression/constant-polytropic-efficiency.ts";
import { constantPolytropicTemperature } from "../../../calc/compression/constant-polytropic-temperature.ts";
import { constantWork } from "../../../calc/compression/constant-work.ts";
import { densityRatio } from "../../../calc/compression/density-ratio.ts";
import { isentropicEfficiency } from "../../../calc/compression/isentropic-efficiency.ts";
import { isentropicTemperature } from "../../../calc/compression/isentropic-temperature.ts";
import { outletPressure } from "../../../calc/compression/outlet-pressure.ts";
import { outletTemperature } from "../../../calc/compression/outlet-temperature.ts";
import { polytropicEfficiency } from "../../../calc/compression/polytropic-efficiency.ts";
import { polytropicTemperature } from "../../../calc/compression/polytropic-temperature.ts";
import { shaftPower } from "../../../calc/compression/shaft-power.ts";
import { specificWork } from "../../../calc/compression/specific-work.ts";
import { airFlow } from "../../../calc/engine/air-flow.ts";
import { dryAirFlow } from "../../../calc/engine/dry-air-flow.ts";
import { dryAirFromFuel } from "../../../calc/engine/dry-air-from-fuel.ts";
import { fuelFlow } from "../../../calc/engine/fuel-flow.ts";
import { fuelFlowFromAir } from "../../../calc/engine/fuel-flow-from-air.ts";
import { fuelMolarMass } from "../../../calc/engine/fuel-molar-mass.ts";
import { moistAirFlow } from "../../../calc/engine/moist-air-flow.ts";
import { neededDensity } from "../../../calc/engine/needed-density.ts";
import { oxygenDemand } from "../../../calc/engine/oxygen-demand.ts";
import { powerFromFuel } from "../../../calc/engine/power-from-fuel.ts";
import { stoichiometricRatio } from "../../../calc/engine/stoichiometric-ratio.ts";
import { condensateFlow } from "../../../calc/exchanger/condensate-flow.ts";
import { constantSensibleDuty } from "../../../calc/exchanger/constant-sensible-duty.ts";
import { coolerOutletTemperature } from "../../../calc/exchanger/cooler-outlet-temperature.ts";
import { duty } from "../../../calc/exchanger/duty.ts";
import { flowForDuty } from "../../../calc/exchanger/flow-for-duty.ts";
import { latentDuty } from "../../../calc/exchanger/latent-duty.ts";
import { meanHeatCapacity } from "../../../calc/exchanger/mean-heat-capacity.ts";
import { sensibleDuty } from "../../../calc/exchanger/sensible-duty.ts";
import { temperatureEffectiveness } from "../../../calc/exchanger/temperature-effectiveness.ts";
import { pressureAfterLoss } from "../../../calc/flow/pressure-after-loss.ts";
import { density } from "../../../calc/fluids/density.ts";
import { dewPoint } from "../../../calc/fluids/dew-point.ts";
import { enhancementFactor } from "../../../calc/fluids/enhancement-factor.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { humidityRatio } from "../../../calc/fluids/humidity-ratio.ts";
import { humidityRatioFromWetBulb } from "../../../calc/fluids/humidity-ratio-from-wet-bulb.ts";
import { latentHeat } from "../../../calc/fluids/latent-heat.ts";
import { saturatedHumidityRatio } from "../../../calc/fluids/saturated-humidity-ratio.ts";
import { saturationPressure } from "../../../calc/fluids/saturation-pressure.ts";
import { temperatureEntropy } from "../../../calc/fluids/temperature-entropy.ts";
import { vapourPressure } from "../../../calc/fluids/vapour-pressure.ts";
import { vapourPressureFromHumidityRatio } from "../../../calc/fluids/vapour-pressure-from-humidity-ratio.ts";
import { atmosphericWaterConductivity } from "../../../calc/fluids/water/atmospheric-water-conductivity.ts";
import { atmosphericWaterDensity } from "../../../calc/fluids/water/atmospheric-water-density.ts";
import { atmosphericWaterEnthalpy } from "../../../calc/fluids/water/atmospheric-water-enthalpy.ts";
import { atmosphericWaterHeatCapacity } from "../../../calc/fluids/water/atmospheric-water-heat-capacity.ts";
import { atmosphericWaterViscosity } from "../../../calc/fluids/water/atmospheric-water-viscosity.ts";
import { boilingMargin } from "../../../calc/fluids/water/boiling-margin.ts";
import { boilingTemperature } from "../../../calc/fluids/water/boiling-temperature.ts";
import { compressedWaterConductivity } from "../../../calc/fluids/water/compressed-water-conductivity.ts";
import { compressedWaterDensity } from "../../../calc/fluids/water/compressed-water-density.ts";
import { compressedWaterEnthalpy } from "../../../calc/fluids/water/compressed-water-enthalpy.ts";
import { compressedWaterEntropy } from "../../../calc/fluids/water/compressed-water-entropy.ts";
import { compressedWaterHeatCapacity } from "../../../calc/fluids/water/compressed-water-heat-capacity.ts";
import { compressedWaterSpeedOfSound } from "../../../calc/fluids/water/compressed-water-speed-of-sound.ts";
import { steamEnthalpy } from "../../../calc/fluids/water/steam-enthalpy.ts";
import { vaporisationHeat } from "../../../calc/fluids/water/vaporisation-heat.ts";
import { waterViscosity } from "../../../calc/fluids/water/water-viscosity.ts";
import { wickLatentHeat } from "../../../calc/fluids/wick-latent-heat.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";

/** What of its vapour a cooler leaves in the air. */
export const condensingRelations: readonly AnyRelation[] = [
  saturationPressure,
  enhancementFactor,
  saturatedHumidityRatio,
];

/** From a humidity reading to moist air, and the same. */
export const vapourRelations: readonly AnyRelation[] = [
  ...condensingRelations,
  vapourPressure,
  humidityRatio,
  vapourPressureFromHumidityRatio,
  wickLatentHeat,
  humidityRatioFromWetBulb,
];

/** The same, with the dew point of the charge. */
export const humidityRelations: readonly AnyRelation[] = [...vapourRelations, dewPoint];

/** One compression of given isentropic efficiency. */
export const isentropicRelations: readonly AnyRelation[] = [
  gasConstant,
  density,
  enthalpy,
  temperatureEntropy,
  outletPressure,
  isentropicTemperature,
  actualEnthalpy,
  outletTemperature,
  polytropicEfficiency,
  specificWork,
  densityRatio,
];

/** One compression, with either heat capacity and either efficiency. */
export const compressorRelations: readonly AnyRelation[] = [
  ...isentropicRelations,
  polytropicTemperature,
  isentropicEfficiency,
  shaftPower,
  constantIsentropicTemperature,
  constantOutletTemperature,
  constantPolytropicTemperature,
  constantHeatCapacity,
  constantWork,
  constantIsentropicEfficiency,
  constantPolytropicEfficiency,
];

/** Two compressions of given isentropic efficiency, each with a cooler, and either heat capacity. */
export const splitRelations: readonly AnyRelation[] = [
  ...isentropicRelations.filter((relation) => relation !== densityRatio),
  constantIsentropicTemperature,
  constantOutletTemperature,
  constantHeatCapacity,
  constantWork,
  constantPolytropicEfficiency,
  shaftPower,
  coolerOutletTemperature,
  pressureAfterLoss,
  sensibleDuty,
  constantSensibleDuty,
  condensateFlow,
  latentHeat,
  latentDuty,
  duty,
];

/** The density of air. */
export const airRelations: readonly AnyRelation[] = [gasConstant, density];

/** The air of an engine, from its size or from its fuel. */
export const engineRelations: readonly AnyRelation[] = [
  airFlow,
  neededDensity,
  fuelFlow,
  dryAirFromFuel,
  moistAirFlow,
  dryAirFlow,
];

/** The power that an air flow carries. */
export const powerRelations: readonly AnyRelation[] = [fuelFlowFromAir, powerFromFuel];

/** A cooler of given effectiveness and loss. */
export const coolerRelations: readonly AnyRelation[] = [
  coolerOutletTemperature,
  temperatureEffectiveness,
  sensibleDuty,
  constantSensibleDuty,
  condensateFlow,
  latentDuty,
  duty,
  latentHeat,
  pressureAfterLoss,
];

/** Fresh water that carries a duty away. */
export const coolingWaterRelations: readonly AnyRelation[] = [
  compressedWaterEnthalpy,
  meanHeatCapacity,
  flowForDuty,
];

/** The standard atmosphere and what the barometer says against it. */
export const atmosphereRelations: readonly AnyRelation[] = [
  standardTemperature,
  standardPressure,
  pressureAltitude,
  geopotentialAltitude,
  altimeterAltitude,
  seaLevelAltitude,
  barometerDeviation,
];

/** The air that a fuel needs, from what it is made of. */
export const fuelRelations: readonly AnyRelation[] = [oxygenDemand, fuelMolarMass, stoichiometricRatio];

/** The state of liquid water, near atmospheric pressure and under more. */
export const waterRelations: readonly AnyRelation[] = [
  atmosphericWaterConductivity,
  atmosphericWaterDensity,
  atmosphericWaterEnthalpy,
  atmosphericWaterHeatCapacity,
  atmosphericWaterViscosity,
  boilingMargin,
  boilingTemperature,
  compressedWaterConductivity,
  compressedWaterDensity,
  compressedWaterEnthalpy,
  compressedWaterEntropy,
  compressedWaterHeatCapacity,
  compressedWaterSpeedOfSound,
  steamEnthalpy,
  vaporisationHeat,
  waterViscosity,
];
