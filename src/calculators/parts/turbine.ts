import { exhaustFlow } from "../../../calc/compression/exhaust-flow.ts";
import { expansionRatio } from "../../../calc/compression/expansion-ratio.ts";
import { turbineFlow } from "../../../calc/compression/turbine-flow.ts";
import { turbineIdealFall } from "../../../calc/compression/turbine-ideal-fall.ts";
import { turbineInletPressure } from "../../../calc/compression/turbine-inlet-pressure.ts";
import { turbineOutletTemperature } from "../../../calc/compression/turbine-outlet-temperature.ts";
import { turbinePower } from "../../../calc/compression/turbine-power.ts";
import { turbineWork } from "../../../calc/compression/turbine-work.ts";
import { dryAirFlow } from "../../../calc/engine/dry-air-flow.ts";
import { exchangePressure } from "../../../calc/engine/exchange-pressure.ts";
import { fuelFlowFromAir } from "../../../calc/engine/fuel-flow-from-air.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";
import type { Field } from "../engine/calculator.ts";
import { combustionInputs } from "./engine.ts";

/** The turbine of a turbocharger, its gas, and the mixture that makes it. */
export const turbineInputs = {
  eta_T: {
    label: "Turbine efficiency",
    symbol: "eta_T",
    kind: "fraction",
    start: 0.7,
    limits: [0.2, 1],
    typical: [0.5, 0.82],
    help: "Total to static, from the turbine's map.",
  },
  eta_m: {
    label: "Mechanical efficiency of the turbocharger",
    symbol: "eta_m",
    kind: "fraction",
    start: 0.97,
    limits: [0.5, 1],
    typical: [0.9, 0.99],
    help: "1 where the map's efficiency holds the bearings already.",
  },
  T_g: {
    label: "Exhaust temperature before the turbine",
    symbol: "T_g",
    kind: "temperature",
    start: 873.15,
    limits: [400, 1600],
    typical: [623.15, 1323.15],
    help: "",
  },
  p_T_out: {
    label: "Pressure after the turbine",
    symbol: "p_T_out",
    kind: "pressure",
    start: 104_000,
    limits: [20_000, 500_000],
    typical: [60_000, 130_000],
    help: "The barometer and what silencer and pipe cost.",
  },
  lambda: combustionInputs.lambda,
  AFR_st: combustionInputs.AFR_st,
  kappa_g: {
    label: "Heat-capacity ratio of the exhaust gas",
    symbol: "kappa_g",
    kind: "ratio",
    start: 1.33,
    limits: [1.2, 1.45],
    typical: [1.29, 1.37],
    help: "",
  },
  c_p_g: {
    label: "Heat capacity of the exhaust gas",
    symbol: "c_p_g",
    kind: "specificHeat",
    start: 1150,
    limits: [900, 1600],
    typical: [1050, 1300],
    help: "",
  },
} as const satisfies Record<string, Field>;

/** From the power of a compressor to the pressure before the turbine that drives it, and the gas exchange. */
export const turbineRelations: readonly AnyRelation[] = [
  dryAirFlow,
  fuelFlowFromAir,
  exhaustFlow,
  turbineFlow,
  turbinePower,
  turbineWork,
  turbineIdealFall,
  expansionRatio,
  turbineInletPressure,
  turbineOutletTemperature,
  exchangePressure,
];
