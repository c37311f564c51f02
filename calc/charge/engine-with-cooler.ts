import { constantIsentropicTemperature } from "../compression/constant-isentropic-temperature.ts";
import { constantOutletTemperature } from "../compression/constant-outlet-temperature.ts";
import { outletPressure } from "../compression/outlet-pressure.ts";
import { airFlow } from "../engine/air-flow.ts";
import { arrangementOf } from "../exchanger/arrangements.ts";
import { capacityRate } from "../exchanger/capacity-rate.ts";
import { capacityRatio } from "../exchanger/capacity-ratio.ts";
import { conductanceAtFlow } from "../exchanger/conductance-at-flow.ts";
import { coolerOutletTemperature } from "../exchanger/cooler-outlet-temperature.ts";
import { dutyOfRate } from "../exchanger/duty-of-rate.ts";
import { overallConductance } from "../exchanger/overall-conductance.ts";
import { transferUnits } from "../exchanger/transfer-units.ts";
import { waterOutletTemperature } from "../exchanger/water-outlet-temperature.ts";
import { lossAtFlow } from "../flow/loss-at-flow.ts";
import { pressureAfterLoss } from "../flow/pressure-after-loss.ts";
import { density } from "../fluids/density.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";

/**
 * Compressor, cooler and engine with constant properties. Inlet in K and Pa; gas constant and heat capacity of the air in
 * J/(kg K); the cooler's air side with its conductance and loss at a reference flow and the powers by which they change.
 */
export interface EngineWithCoolerGiven {
  readonly T_1: SI;
  readonly p_1: SI;
  readonly r: SI;
  readonly eta_s: SI;
  readonly kappa: SI;
  readonly R_m: SI;
  readonly c_p: SI;
  readonly arrangement: string;
  readonly T_w_in: SI;
  readonly m_w: SI;
  readonly c_w: SI;
  readonly UA_ref: SI;
  readonly n_h: SI;
  readonly UA_w: SI;
  readonly Delta_p_ref: SI;
  readonly n_p: SI;
  readonly m_ref: SI;
  readonly V_d: SI;
  readonly n: SI;
  readonly n_R: SI;
  readonly eta_v: SI;
}

/** kg/s, K, Pa, W/K, W, kg/m³. */
export interface EngineWithCooler {
  readonly m_a: SI;
  readonly T_2: SI;
  readonly p_2: SI;
  readonly T_3: SI;
  readonly p_3: SI;
  readonly UA: SI;
  readonly P: SI;
  readonly R: SI;
  readonly Q: SI;
  readonly T_w_out: SI;
  readonly rho_3: SI;
}

const TOLERANCE = 1e-13;
/** So little of the most that an engine can take is left by no cooler, or it takes all the pressure. */
const LEAST = 1e-3;

/**
 * The air flow at which engine, compressor and cooler agree: the flow sets what the cooler does, and the charge that leaves
 * the cooler sets the flow.
 *
 * All inputs above zero. Near no flow the engine draws more than flows, and above what cold air without a loss would make it
 * draw, less; in between they agree. Throws an Error only where a hundred rounds do not find that.
 *
 * @example
 * engineWithCooler({ T_1: 273.56, p_1: 86630, r: 2.51, eta_s: 0.692, kappa: 1.4, R_m: 287.05, c_p: 1006,
 *   arrangement: "counterflow", T_w_in: 303.1, m_w: 1.99, c_w: 4180, UA_ref: 1520, n_h: 0.7, UA_w: 3960,
 *   Delta_p_ref: 9220, n_p: 1.8, m_ref: 0.55, V_d: 0.0145, n: 38.4, n_R: 2, eta_v: 0.851 }).m_a // 0.544 kg/s
 */
export const engineWithCooler: Model<EngineWithCoolerGiven, EngineWithCooler> = (given, trace = plain) => {
  const { T_1, p_1, R_m } = given;
  const p_2 = trace.use(outletPressure, { r: given.r, p_in: p_1 }, "compressor");
  const T_s = trace.use(
    constantIsentropicTemperature,
    { T_in: T_1, r: given.r, kappa: given.kappa },
    "compressor",
  );
  const T_2 = trace.use(constantOutletTemperature, { T_in: T_1, T_s, eta_s: given.eta_s }, "compressor");
  const at = (m_a: SI, through: Trace) => chargeAt(given, { m_a, T_2, p_2 }, through);

  // Without loss and with air as cold as air or water come, the engine takes most.
  const most = airFlow.compute({
    ...given,
    rho: density.compute({ p: p_2, R_m, T: Math.min(T_2, given.T_w_in) }),
  });
  const missing = (m_a: SI) => at(m_a, plain).drawn - m_a;
  const m_a = bracketedRoot(missing, LEAST * most, most * (1 + TOLERANCE), { tolerance: TOLERANCE * most });
  const { drawn: _, ...charge } = at(m_a, trace);
  return { m_a, T_2, p_2, ...charge };
};

/** The charge that a flow of m_a kg/s leaves the cooler as, and the flow that the engine would draw of it. */
function chargeAt(
  given: EngineWithCoolerGiven,
  { m_a, T_2, p_2 }: { readonly m_a: SI; readonly T_2: SI; readonly p_2: SI },
  trace: Trace,
) {
  const { UA_ref, m_ref, n_h, n_p, T_w_in, R_m } = given;
  const C_a = trace.use(capacityRate, { m: m_a, c_m: given.c_p }, "air");
  const C_w = trace.use(capacityRate, { m: given.m_w, c_m: given.c_w }, "water");
  const R = trace.use(capacityRatio, { C_a, C_w }, "cooler");
  const UA_a = trace.use(conductanceAtFlow, { UA_ref, m: m_a, m_ref, n_h }, "air side of the cooler");
  const UA = trace.use(overallConductance, { UA_a, UA_w: given.UA_w }, "cooler");
  const NTU = trace.use(transferUnits, { UA, C_a }, "cooler");
  const arrangement = arrangementOf(given.arrangement);
  const P = trace.use(arrangement.effectiveness, { NTU, R }, arrangement.name);
  const T_3 = trace.use(coolerOutletTemperature, { T_in: T_2, P, T_w_in }, "cooler");
  const T_w_out = trace.use(waterOutletTemperature, { T_w_in, R, P, T_in: T_2 }, "cooler");
  const Q = trace.use(dutyOfRate, { C: C_a, T_in: T_2, T_out: T_3 }, "air");
  const Delta_p = trace.use(lossAtFlow, { Delta_p_ref: given.Delta_p_ref, m: m_a, m_ref, n_p }, "cooler");
  const p_3 = trace.use(pressureAfterLoss, { p_in: p_2, Delta_p }, "cooler");
  const rho_3 = trace.use(density, { p: p_3, R_m, T: T_3 }, "charge");
  const drawn = trace.use(airFlow, { ...given, rho: rho_3 }, "engine");
  return { T_3, p_3, UA, P, R, Q, T_w_out, rho_3, drawn };
}
