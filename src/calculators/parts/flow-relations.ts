import { gaugePressure } from "../../../calc/atmosphere/gauge-pressure.ts";
import { outletTemperature } from "../../../calc/compression/outlet-temperature.ts";
import { airSpeedOfSound } from "../../../calc/flow/air-speed-of-sound.ts";
import { bendLength } from "../../../calc/flow/bend-length.ts";
import { bendLoss } from "../../../calc/flow/bend-loss.ts";
import { bendLossAtAngle } from "../../../calc/flow/bend-loss-at-angle.ts";
import { bendSeparationLoss } from "../../../calc/flow/bend-separation-loss.ts";
import { bendThrust } from "../../../calc/flow/bend-thrust.ts";
import { bendWallLoss } from "../../../calc/flow/bend-wall-loss.ts";
import { bendsInSeries } from "../../../calc/flow/bends-in-series.ts";
import { boreArea } from "../../../calc/flow/bore-area.ts";
import { closedEndThrust } from "../../../calc/flow/closed-end-thrust.ts";
import { coefficientsInSeries } from "../../../calc/flow/coefficients-in-series.ts";
import { conicalContractionLoss } from "../../../calc/flow/conical-contraction-loss.ts";
import { contractionJet } from "../../../calc/flow/contraction-jet.ts";
import { criticalSpeedRatio } from "../../../calc/flow/critical-speed-ratio.ts";
import { diameterRatio } from "../../../calc/flow/diameter-ratio.ts";
import { diffuserLoss } from "../../../calc/flow/diffuser-loss.ts";
import { ductLoss } from "../../../calc/flow/duct-loss.ts";
import { ductSpeed } from "../../../calc/flow/duct-speed.ts";
import { entranceJet } from "../../../calc/flow/entrance-jet.ts";
import { entranceLoss } from "../../../calc/flow/entrance-loss.ts";
import { fittingLoss } from "../../../calc/flow/fitting-loss.ts";
import { frictionArgument } from "../../../calc/flow/friction-argument.ts";
import { frictionFactorAllRegimes } from "../../../calc/flow/friction-factor-all-regimes.ts";
import { frictionLeft } from "../../../calc/flow/friction-left.ts";
import { frictionNumber } from "../../../calc/flow/friction-number.ts";
import { frictionPartBeyondLaminar } from "../../../calc/flow/friction-part-beyond-laminar.ts";
import { frictionToChoking } from "../../../calc/flow/friction-to-choking.ts";
import { frictionTransitionPart } from "../../../calc/flow/friction-transition-part.ts";
import { frictionTurbulentPart } from "../../../calc/flow/friction-turbulent-part.ts";
import { lossOfLength } from "../../../calc/flow/loss-of-length.ts";
import { machFromFrictionToChoking } from "../../../calc/flow/mach-from-friction-to-choking.ts";
import { machNumber } from "../../../calc/flow/mach-number.ts";
import { mitreLength } from "../../../calc/flow/mitre-length.ts";
import { mitreLoss } from "../../../calc/flow/mitre-loss.ts";
import { outletLoss } from "../../../calc/flow/outlet-loss.ts";
import { pipeLoss } from "../../../calc/flow/pipe-loss.ts";
import { reynoldsNumber } from "../../../calc/flow/reynolds-number.ts";
import { roughFrictionFactor } from "../../../calc/flow/rough-friction-factor.ts";
import { sharpContractionLoss } from "../../../calc/flow/sharp-contraction-loss.ts";
import { staticEnthalpy } from "../../../calc/flow/static-enthalpy.ts";
import { staticPressure } from "../../../calc/flow/static-pressure.ts";
import { staticPressureAfterFriction } from "../../../calc/flow/static-pressure-after-friction.ts";
import { suddenExpansionLoss } from "../../../calc/flow/sudden-expansion-loss.ts";
import { thinningLoss } from "../../../calc/flow/thinning-loss.ts";
import { totalOverStatic } from "../../../calc/flow/total-over-static.ts";
import { totalPressureAfterFriction } from "../../../calc/flow/total-pressure-after-friction.ts";
import { totalPressureLoss } from "../../../calc/flow/total-pressure-loss.ts";
import { density } from "../../../calc/fluids/density.ts";
import { enthalpy } from "../../../calc/fluids/enthalpy.ts";
import { gasConstant } from "../../../calc/fluids/gas-constant.ts";
import { heatCapacity } from "../../../calc/fluids/heat-capacity.ts";
import { heatCapacityRatio } from "../../../calc/fluids/heat-capacity-ratio.ts";
import { temperatureEntropy } from "../../../calc/fluids/temperature-entropy.ts";
import { viscosity } from "../../../calc/fluids/viscosity.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";

/** The state of a stream in a bore, from its total side. */
export const flowingAirRelations: readonly AnyRelation[] = [
  boreArea,
  gasConstant,
  density,
  ductSpeed,
  enthalpy,
  staticEnthalpy,
  outletTemperature,
  temperatureEntropy,
  staticPressure,
  heatCapacity,
  heatCapacityRatio,
  airSpeedOfSound,
  machNumber,
];

/** What bends, inlets and outlets cost, in multiples of the dynamic pressure. */
export const coefficientRelations: readonly AnyRelation[] = [
  bendWallLoss,
  bendSeparationLoss,
  bendLoss,
  mitreLoss,
  roughFrictionFactor,
  bendLength,
  mitreLength,
  lossOfLength,
  bendLossAtAngle,
  bendsInSeries,
  coefficientsInSeries,
  entranceJet,
  entranceLoss,
  diameterRatio,
  contractionJet,
  sharpContractionLoss,
  conicalContractionLoss,
  suddenExpansionLoss,
  diffuserLoss,
];

/** Friction and parts at one density. */
export const lossRelations: readonly AnyRelation[] = [
  viscosity,
  reynoldsNumber,
  frictionArgument,
  frictionTurbulentPart,
  frictionPartBeyondLaminar,
  frictionTransitionPart,
  frictionFactorAllRegimes,
  pipeLoss,
  fittingLoss,
  ductLoss,
];

/** Flow with friction and without heat, to the end of a bore and through its outlet. */
export const frictionFlowRelations: readonly AnyRelation[] = [
  frictionNumber,
  frictionToChoking,
  frictionLeft,
  machFromFrictionToChoking,
  criticalSpeedRatio,
  staticPressureAfterFriction,
  totalOverStatic,
  totalPressureAfterFriction,
  outletLoss,
  totalPressureLoss,
  thinningLoss,
];

/** Forces on a bend and on a closed end. */
export const thrustRelations: readonly AnyRelation[] = [gaugePressure, bendThrust, closedEndThrust];
