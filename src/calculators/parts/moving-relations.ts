import { capacityRatio } from "../../../calc/exchanger/capacity-ratio.ts";
import { conductanceAtFlow } from "../../../calc/exchanger/conductance-at-flow.ts";
import { conductanceOfResistances } from "../../../calc/exchanger/conductance-of-resistances.ts";
import { conductanceOfShare } from "../../../calc/exchanger/conductance-of-share.ts";
import { coolerOutletTemperature } from "../../../calc/exchanger/cooler-outlet-temperature.ts";
import { channelArea } from "../../../calc/exchanger/film/channel-area.ts";
import { channelDiameter } from "../../../calc/exchanger/film/channel-diameter.ts";
import { channelSidesRatio } from "../../../calc/exchanger/film/channel-sides-ratio.ts";
import { entranceFactor } from "../../../calc/exchanger/film/entrance-factor.ts";
import { filmCoefficient } from "../../../calc/exchanger/film/film-coefficient.ts";
import { filmConductance } from "../../../calc/exchanger/film/film-conductance.ts";
import { foulingResistance } from "../../../calc/exchanger/film/fouling-resistance.ts";
import { graetzNumber } from "../../../calc/exchanger/film/graetz-number.ts";
import { laminarNusselt } from "../../../calc/exchanger/film/laminar-nusselt.ts";
import { passageSpeed } from "../../../calc/exchanger/film/passage-speed.ts";
import { passagesArea } from "../../../calc/exchanger/film/passages-area.ts";
import { prandtlNumber } from "../../../calc/exchanger/film/prandtl-number.ts";
import { rectangularNusselt } from "../../../calc/exchanger/film/rectangular-nusselt.ts";
import { smoothFrictionFactor } from "../../../calc/exchanger/film/smooth-friction-factor.ts";
import { transitionNusselt } from "../../../calc/exchanger/film/transition-nusselt.ts";
import { turbulentNusselt } from "../../../calc/exchanger/film/turbulent-nusselt.ts";
import { turbulentNusseltInTube } from "../../../calc/exchanger/film/turbulent-nusselt-in-tube.ts";
import { turbulentShare } from "../../../calc/exchanger/film/turbulent-share.ts";
import { wettedSurface } from "../../../calc/exchanger/film/wetted-surface.ts";
import { hotWallTemperature } from "../../../calc/exchanger/hot-wall-temperature.ts";
import { resistanceOfShare } from "../../../calc/exchanger/resistance-of-share.ts";
import { transferUnits } from "../../../calc/exchanger/transfer-units.ts";
import { waterOutletTemperature } from "../../../calc/exchanger/water-outlet-temperature.ts";
import { boreArea } from "../../../calc/flow/bore-area.ts";
import { coreReynolds } from "../../../calc/flow/core-reynolds.ts";
import { massFlux } from "../../../calc/flow/mass-flux.ts";
import {
  glycolConductivities,
  glycolDensities,
  glycolHeatCapacities,
  glycolViscosities,
} from "../../../calc/fluids/glycol/glycol.ts";
import { seawaterConductivity } from "../../../calc/fluids/seawater-conductivity.ts";
import { seawaterViscosity } from "../../../calc/fluids/seawater-viscosity.ts";
import { atmosphericWaterConductivity } from "../../../calc/fluids/water/atmospheric-water-conductivity.ts";
import { atmosphericWaterHeatCapacity } from "../../../calc/fluids/water/atmospheric-water-heat-capacity.ts";
import { atmosphericWaterViscosity } from "../../../calc/fluids/water/atmospheric-water-viscosity.ts";
import { compressedWaterConductivity } from "../../../calc/fluids/water/compressed-water-conductivity.ts";
import { compressedWaterHeatCapacity } from "../../../calc/fluids/water/compressed-water-heat-capacity.ts";
import { waterViscosity } from "../../../calc/fluids/water/water-viscosity.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";
import {
  boilingRelations,
  effectivenessRelations,
  liquidDensityRelations,
  rightWayRelations,
  streamRelations,
} from "./exchanger-relations.ts";

/** A conductance that moves, from its passages. */
const ofPassages: readonly AnyRelation[] = [
  conductanceAtFlow,
  conductanceOfResistances,
  boreArea,
  channelSidesRatio,
  channelDiameter,
  channelArea,
  rectangularNusselt,
  passagesArea,
  wettedSurface,
  foulingResistance,
  massFlux,
  coreReynolds,
  prandtlNumber,
  graetzNumber,
  laminarNusselt,
  smoothFrictionFactor,
  turbulentNusselt,
  entranceFactor,
  turbulentNusseltInTube,
  turbulentShare,
  transitionNusselt,
  filmCoefficient,
  filmConductance,
  passageSpeed,
];

/** What the film of fresh water depends on. */
export const freshFilmRelations: readonly AnyRelation[] = [
  atmosphericWaterConductivity,
  atmosphericWaterHeatCapacity,
  atmosphericWaterViscosity,
  compressedWaterConductivity,
  compressedWaterHeatCapacity,
  waterViscosity,
];

/** Both streams: what they carry, and what the film of the liquid depends on. */
export const movingStreamRelations: readonly AnyRelation[] = [
  ...streamRelations,
  ...liquidDensityRelations,
  ...[glycolDensities, glycolHeatCapacities, glycolConductivities, glycolViscosities].flatMap((of) =>
    Object.values(of),
  ),
  seawaterConductivity,
  seawaterViscosity,
  ...freshFilmRelations,
];

/** All that rating a cooler by its passages uses, with its margins to boiling, but for the effectiveness of its arrangement. */
const ratingOfPassages: readonly AnyRelation[] = [
  ...ofPassages,
  ...movingStreamRelations,
  ...boilingRelations,
  capacityRatio,
  transferUnits,
  coolerOutletTemperature,
  waterOutletTemperature,
  hotWallTemperature,
];

/** The same for one that is known by its passages or by one point. */
const ratingOfAny: readonly AnyRelation[] = [conductanceOfShare, resistanceOfShare, ...ratingOfPassages];

/** By its passages, with any arrangement. */
export const movingPassagesRelations: readonly AnyRelation[] = [
  ...ratingOfPassages,
  ...effectivenessRelations,
];

/** With any arrangement. */
export const movingRelations: readonly AnyRelation[] = [...ratingOfAny, ...effectivenessRelations];

/** With the hoses the right way only. */
export const rightWayMovingRelations: readonly AnyRelation[] = [...ratingOfAny, ...rightWayRelations];
