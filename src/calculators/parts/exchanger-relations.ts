import { arrangements } from "../../../calc/exchanger/arrangements.ts";
import { capacityRate } from "../../../calc/exchanger/capacity-rate.ts";
import { capacityRatio } from "../../../calc/exchanger/capacity-ratio.ts";
import { conductance } from "../../../calc/exchanger/conductance.ts";
import { coolerOutletTemperature } from "../../../calc/exchanger/cooler-outlet-temperature.ts";
import { correctionFromTransferUnits } from "../../../calc/exchanger/correction-from-transfer-units.ts";
import { dutyOfRate } from "../../../calc/exchanger/duty-of-rate.ts";
import { flowForDuty } from "../../../calc/exchanger/flow-for-duty.ts";
import { heatBalance } from "../../../calc/exchanger/heat-balance.ts";
import { logMeanDifference } from "../../../calc/exchanger/log-mean-difference.ts";
import { meanHeatCapacity } from "../../../calc/exchanger/mean-heat-capacity.ts";
import { smallerEffectiveness } from "../../../calc/exchanger/smaller-effectiveness.ts";
import { smallerRatio } from "../../../calc/exchanger/smaller-ratio.ts";
import { smallerTransferUnits } from "../../../calc/exchanger/smaller-transfer-units.ts";
import { temperatureChange } from "../../../calc/exchanger/temperature-change.ts";
import { temperatureEffectiveness } from "../../../calc/exchanger/temperature-effectiveness.ts";
import { temperatureGap } from "../../../calc/exchanger/temperature-gap.ts";
import { transferUnits } from "../../../calc/exchanger/transfer-units.ts";
import { waterOutletTemperature } from "../../../calc/exchanger/water-outlet-temperature.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { massFlow } from "../../../calc/fluids/mass-flow.ts";
import { seawaterDensity } from "../../../calc/fluids/seawater-density.ts";
import { seawaterHeatCapacity } from "../../../calc/fluids/seawater-heat-capacity.ts";
import { volumeFlow } from "../../../calc/fluids/volume-flow.ts";
import { atmosphericWaterDensity } from "../../../calc/fluids/water/atmospheric-water-density.ts";
import { atmosphericWaterEnthalpy } from "../../../calc/fluids/water/atmospheric-water-enthalpy.ts";
import { boilingMargin } from "../../../calc/fluids/water/boiling-margin.ts";
import { boilingTemperature } from "../../../calc/fluids/water/boiling-temperature.ts";
import { compressedWaterDensity } from "../../../calc/fluids/water/compressed-water-density.ts";
import { compressedWaterEnthalpy } from "../../../calc/fluids/water/compressed-water-enthalpy.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";
import { arrangementInputs } from "./exchanger.ts";

/** The effectiveness of every arrangement. */
export const effectivenessRelations: readonly AnyRelation[] = arrangements.map(
  ({ effectiveness }) => effectiveness,
);

/** That of those which can be chosen without swapping hoses. */
export const rightWayRelations: readonly AnyRelation[] = arrangements
  .filter(({ id }) => Object.hasOwn(arrangementInputs.core.options, id))
  .map(({ effectiveness }) => effectiveness);

/** Effectiveness as most books have it. */
export const smallerStreamRelations: readonly AnyRelation[] = [
  smallerEffectiveness,
  smallerRatio,
  smallerTransferUnits,
];

/** Mean heat capacities of both streams, and what they carry. */
export const streamRelations: readonly AnyRelation[] = [
  enthalpy,
  atmosphericWaterEnthalpy,
  compressedWaterEnthalpy,
  seawaterHeatCapacity,
  meanHeatCapacity,
  capacityRate,
  dutyOfRate,
];

/** The density of the liquid, for a flow in litres. */
export const liquidDensityRelations: readonly AnyRelation[] = [
  atmosphericWaterDensity,
  compressedWaterDensity,
  seawaterDensity,
];

/** How far the water is from boiling. */
export const boilingRelations: readonly AnyRelation[] = [boilingTemperature, boilingMargin];

const meanDifferenceRelations: readonly AnyRelation[] = [
  temperatureGap,
  logMeanDifference,
  correctionFromTransferUnits,
];

const common: readonly AnyRelation[] = [
  ...streamRelations,
  ...liquidDensityRelations,
  massFlow,
  capacityRatio,
  ...effectivenessRelations,
  ...smallerStreamRelations,
  ...meanDifferenceRelations,
];

/** From the size of a cooler to what leaves it. */
export const ratingRelations: readonly AnyRelation[] = [
  ...common,
  transferUnits,
  coolerOutletTemperature,
  waterOutletTemperature,
];

/** From what leaves a cooler to its size. */
export const sizingRelations: readonly AnyRelation[] = [
  ...common,
  temperatureEffectiveness,
  conductance,
  waterOutletTemperature,
];

/** From readings on both sides to effectiveness and size. */
export const readingRelations: readonly AnyRelation[] = [
  ...common,
  temperatureEffectiveness,
  temperatureChange,
  flowForDuty,
  heatBalance,
  conductance,
];

/** The water that takes up a duty. */
export const waterFlowRelations: readonly AnyRelation[] = [
  ...streamRelations,
  ...liquidDensityRelations,
  flowForDuty,
  volumeFlow,
];
