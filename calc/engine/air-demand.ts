import { density } from "../fluids/density.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { airFlow } from "./air-flow.ts";
import { acceptEngine, acceptFuel, type EngineGiven, type FuelGiven } from "./cycle.ts";
import { dryAirFlow } from "./dry-air-flow.ts";
import { dryAirFromFuel } from "./dry-air-from-fuel.ts";
import { fuelFlow } from "./fuel-flow.ts";
import { fuelFlowFromAir } from "./fuel-flow-from-air.ts";
import { fuelMolarMass } from "./fuel-molar-mass.ts";
import { type FuelKey, fuels } from "./fuels.ts";
import { moistAirFlow } from "./moist-air-flow.ts";
import { neededDensity } from "./needed-density.ts";
import { oxygenDemand } from "./oxygen-demand.ts";
import { powerFromFuel } from "./power-from-fuel.ts";
import { stoichiometricRatio } from "./stoichiometric-ratio.ts";

/**
 * From `displacement`: engine, and pressure (Pa absolute) and temperature (K) in the manifold. From `power`: brake power
 * in W, fuel and mixture. `fuel` is "given" for AFR_st itself, or a fuel whose ratio is computed. `w` in kg/kg, 0 unless given.
 */
export interface AirDemandGiven extends EngineGiven, FuelGiven {
  readonly from: "displacement" | "power";
  readonly p_m?: SI | undefined;
  readonly T_m?: SI | undefined;
  readonly w?: SI | undefined;
  readonly W_e?: SI | undefined;
  readonly fuel?: "given" | FuelKey | undefined;
}

/** kg/s, kg/m³, W. What the inputs do not decide is missing. */
export interface AirDemand {
  readonly m_a: SI;
  readonly m_da: SI;
  readonly rho_m: SI | undefined;
  readonly m_f: SI | undefined;
  readonly W_e: SI | undefined;
  readonly AFR_st: SI | undefined;
}

/**
 * How much air an engine draws in, or needs.
 *
 * From displacement: air flow, and the fuel and power it can carry where b, lambda and the ratio are given. From power:
 * fuel, air, and the manifold density that it takes where the engine is given. The volumetric efficiency refers to the
 * manifold. Throws a DomainError for a missing or impossible input.
 *
 * @example airDemand({ from: "power", W_e: 235e3, b: 300 / 3.6e9, lambda: 0.85, AFR_st: 14.6 }).m_a // 0.243 kg/s
 */
export const airDemand: Model<AirDemandGiven, AirDemand> = (given, trace = plain) =>
  given.from === "displacement" ? fromDisplacement(given, trace) : fromPower(given, trace);

function fromDisplacement(given: AirDemandGiven, trace: Trace): AirDemand {
  const engine = acceptEngine(given);
  const p = accept("p_m", "The manifold pressure, absolute,", given.p_m, {
    kind: "pressure",
    above: 0,
    atMost: 5e6,
  });
  const T = accept("T_m", "The manifold temperature", given.T_m, {
    kind: "temperature",
    atLeast: 173.15,
    atMost: 1000,
  });
  const w = acceptHumidity(given.w);
  const R_m = trace.use(gasConstant, { w }, "manifold");
  const rho = trace.use(density, { p, R_m, T }, "manifold");
  noteRealGas({ p, T }, "rho_m", trace);
  const m_a = trace.use(airFlow, { ...engine, rho }, "engine");
  const m_da = trace.use(dryAirFlow, { m_a, w }, "engine");
  const AFR_st = stoichiometric(given, trace);
  if (AFR_st === undefined || given.b === undefined || given.lambda === undefined) {
    return { m_a, m_da, rho_m: rho, m_f: undefined, W_e: undefined, AFR_st };
  }
  const { b, lambda } = acceptFuel({ ...given, AFR_st });
  const m_f = trace.use(fuelFlowFromAir, { m_da, lambda, AFR_st }, "engine");
  const W_e = trace.use(powerFromFuel, { m_f, b }, "engine");
  return { m_a, m_da, rho_m: rho, m_f, W_e, AFR_st };
}

function fromPower(given: AirDemandGiven, trace: Trace): AirDemand {
  const W_e = accept("W_e", "The brake power", given.W_e, { kind: "power", above: 0, atMost: 1e8 });
  const { b, lambda, AFR_st } = acceptFuel({ ...given, AFR_st: stoichiometric(given, trace) });
  const w = acceptHumidity(given.w);
  const m_f = trace.use(fuelFlow, { b, W_e }, "engine");
  const m_da = trace.use(dryAirFromFuel, { lambda, AFR_st, m_f }, "engine");
  const m_a = trace.use(moistAirFlow, { m_da, w }, "engine");
  const known = given.V_d !== undefined && given.n !== undefined && given.eta_v !== undefined;
  const rho_m = known ? trace.use(neededDensity, { m_a, ...acceptEngine(given) }, "manifold") : undefined;
  return { m_a, m_da, rho_m, m_f, W_e, AFR_st };
}

function stoichiometric(given: AirDemandGiven, trace: Trace): SI | undefined {
  const { fuel = "given" } = given;
  if (fuel === "given") return given.AFR_st;
  const { n_C, n_H, n_O, name } = fuels[fuel];
  const n_O2 = trace.use(oxygenDemand, { n_C, n_H, n_O }, name);
  const M_f = trace.use(fuelMolarMass, { n_C, n_H, n_O }, name);
  return trace.use(stoichiometricRatio, { n_O2, M_f }, name);
}

const acceptHumidity = (w: SI | undefined) =>
  accept("w", "The humidity ratio", w ?? 0, { kind: "humidityRatio", atLeast: 0, atMost: 1 });
