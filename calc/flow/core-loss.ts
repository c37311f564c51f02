import {
  acceptAbsolutePressure,
  acceptAirTemperature,
  acceptFlow,
  acceptHumidityRatio,
} from "../fluids/accept-air.ts";
import { density } from "../fluids/density.ts";
import { noteFog } from "../fluids/fog-note.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { viscosity } from "../fluids/viscosity.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { boreArea } from "./bore-area.ts";
import { coolerLoss } from "./cooler-loss.ts";
import { coreAcceleration } from "./core-acceleration.ts";
import { coreEntranceCoefficient } from "./core-entrance-coefficient.ts";
import { coreEntranceLoss } from "./core-entrance-loss.ts";
import { coreExitCoefficient } from "./core-exit-coefficient.ts";
import { coreExitLoss } from "./core-exit-loss.ts";
import { coreFriction } from "./core-friction.ts";
import { coreJetContraction } from "./core-jet-contraction.ts";
import { coreMeanDensity } from "./core-mean-density.ts";
import { coreMeanTemperature } from "./core-mean-temperature.ts";
import { corePressureLoss } from "./core-pressure-loss.ts";
import { coreReynolds } from "./core-reynolds.ts";
import { acceptCore, type Core, type CoreGiven, regimeOf } from "./core-shape.ts";
import { ductSpeed } from "./duct-speed.ts";
import { fittingLoss } from "./fitting-loss.ts";
import { LAMINAR_UP_TO, TURBULENT_FROM } from "./flow-regimes.ts";
import { headerShare } from "./header-share.ts";
import { noteLargeLoss } from "./large-loss-note.ts";
import { maskingOpenArea } from "./masking-open-area.ts";
import { massFlux } from "./mass-flux.ts";
import { pressureAfterLoss } from "./pressure-after-loss.ts";
import { mostFlow, pressureLeft } from "./pressure-left.ts";

/** The air: kg/s; Pa absolute and K before the cooler, K after it; kg/kg, dry unless given. Its core and headers. */
export interface CoreLossGiven extends CoreGiven {
  readonly m_a?: SI | undefined;
  readonly p_2?: SI | undefined;
  readonly T_2?: SI | undefined;
  readonly T_3?: SI | undefined;
  readonly w?: SI | undefined;
}

/** Pa, kg/(m² s), kg/m³. Without headers theirs are undefined, and `Delta_p_23` is the core's. */
export interface CoreLoss {
  readonly Delta_p_23: SI;
  readonly Delta_p_core: SI;
  readonly p_3: SI;
  readonly G: SI;
  readonly Re: SI;
  readonly rho_in: SI;
  readonly rho_out: SI;
  readonly K_c: SI;
  readonly K_e: SI;
  readonly Delta_p_ent: SI;
  readonly Delta_p_acc: SI;
  readonly Delta_p_fr: SI;
  readonly Delta_p_exit: SI;
  readonly Delta_p_hd_in: SI | undefined;
  readonly Delta_p_hd_out: SI | undefined;
  readonly s_hd: SI | undefined;
}

/**
 * The pressure that air loses in the core of a cooler, part by part, and in its headers.
 *
 * The density behind the core depends on the pressure there, which is found by a bracketed root to 1e-13. The friction
 * factor is taken as given, at the speed in the passages that are open. Throws a DomainError for what cannot be, and where
 * the loss would take all the pressure, with the flow from which on that is so.
 *
 * @example
 * coreLoss({ m_a: 0.35, p_2: 260e3, T_2: 458.15, T_3: 331.928, A_c: 0.0207375, sigma: 0.63032, L: 0.16, D_h: 2.4508e-3,
 *   f_F: 0.042711, surface: "interrupted", headers: "none" }).Delta_p_core // 684.4 Pa
 */
export const coreLoss: Model<CoreLossGiven, CoreLoss> = (given, trace = plain) => {
  const m_a = acceptFlow("m_a", "The air flow", given.m_a);
  const p_2 = acceptAbsolutePressure("p_2", "The pressure before the cooler, absolute,", given.p_2);
  const T_2 = acceptAirTemperature("T_2", "The air temperature before the cooler", given.T_2);
  const T_3 = acceptAirTemperature("T_3", "The air temperature after the cooler", given.T_3);
  const w = acceptHumidityRatio("w", given.w);
  const air: Air = { p_2, T_2, T_3, R_m: trace.use(gasConstant, { w }, "air") };
  const core = acceptCore(given);

  const found = pass(core, air, m_a, trace);
  if (!found)
    throw new DomainError(
      "m_a",
      "So much air does not pass: the losses would take all the pressure, or the air would come near the speed of sound. The flow has to be below the bound.",
      {
        value: mostFlow((m) => margin(core, air, m), m_a),
        kind: "massFlow",
      },
    );

  noteLargeLoss(found.Delta_p_23, p_2, core.headers ? "Delta_p_23" : "Delta_p_core", trace);
  remarkOnRegime(given.surface, found.Re, trace);
  if (T_3 < T_2) noteFog({ T: T_3, p: found.p_3, w }, "w", trace, "behind the cooler");
  else noteFog({ T: T_2, p: p_2, w }, "w", trace, "before the cooler");
  noteRealGas({ p: p_2, T: Math.min(T_2, T_3) }, "rho_in", trace);
  return found;
};

/** Says where the passages are said to be laminar or turbulent, and the Reynolds number says otherwise. */
function remarkOnRegime(surface: CoreGiven["surface"], Re: SI, trace: Trace): void {
  const tell = (limit: SI, says: string) =>
    trace.note({ about: "Re", says, limit: { value: limit, kind: "ratio" } });
  const regime = regimeOf(surface);
  if (regime === "laminar" && Re > LAMINAR_UP_TO)
    tell(LAMINAR_UP_TO, "Above the bound the flow in the passages is hardly laminar, as was chosen.");
  if (regime === "turbulent" && Re < TURBULENT_FROM)
    tell(TURBULENT_FROM, "Below the bound the flow in the passages is hardly turbulent, as was chosen.");
}

interface Air {
  readonly p_2: SI;
  readonly T_2: SI;
  readonly T_3: SI;
  readonly R_m: SI;
}

/** What the core's inlet and the speed in it decide: all that does not depend on the pressure behind. */
interface Inlet {
  readonly p_in: SI;
  readonly rho_in: SI;
  readonly G: SI;
  readonly K_c: SI;
  readonly K_e: SI;
  readonly Delta_p_hd_in: SI | undefined;
}

/** The air from before the inlet header into the core. */
function inletOf(core: Core, air: Air, m: SI, trace: Trace): Inlet {
  const { p_2, T_2, R_m } = air;
  const Delta_p_hd_in =
    core.headers && lossOfHeader(core.headers.inlet, { p: p_2, T: T_2, R_m, m }, trace, "inlet header");
  const p_in =
    Delta_p_hd_in === undefined
      ? p_2
      : trace.use(pressureAfterLoss, { p_in: p_2, Delta_p: Delta_p_hd_in }, "inlet header");
  const A_open = trace.use(maskingOpenArea, { A_c: core.A_c, x_b: core.x_b }, "core");
  const G = trace.use(massFlux, { m, A: A_open }, "passages of the core");
  const C_c = trace.use(coreJetContraction, { sigma: core.sigma }, "core");
  const K_c = trace.use(coreEntranceCoefficient, { C_c, K_d: core.K_d }, "core");
  const K_e = trace.use(coreExitCoefficient, { K_d: core.K_d, sigma: core.sigma }, "core");
  const rho_in = trace.use(density, { p: p_in, R_m, T: T_2 }, "before the core");
  return { p_in, rho_in, G, K_c, K_e, Delta_p_hd_in };
}

/** The loss of the core and its parts at the pressure p_out behind it. */
function lossAt(core: Core, air: Air, inlet: Inlet, p_out: SI, trace: Trace) {
  const { sigma, f_F, L, D_h } = core;
  const { rho_in, G, K_c, K_e } = inlet;
  const rho_out = trace.use(density, { p: p_out, R_m: air.R_m, T: air.T_3 }, "behind the core");
  const rho_mean = trace.use(coreMeanDensity, { rho_in, rho_out }, "core");
  const Delta_p_ent = trace.use(coreEntranceLoss, { G, rho_in, sigma, K_c }, "core");
  const Delta_p_acc = trace.use(coreAcceleration, { G, rho_out, rho_in }, "core");
  const Delta_p_fr = trace.use(coreFriction, { f_F, L, D_h, G, rho_mean }, "core");
  const Delta_p_exit = trace.use(coreExitLoss, { G, rho_out, sigma, K_e }, "core");
  const parts = { ent: Delta_p_ent, acc: Delta_p_acc, fr: Delta_p_fr, exit: Delta_p_exit };
  const Delta_p_core = trace.use(corePressureLoss, parts, "core");
  return { rho_out, Delta_p_ent, Delta_p_acc, Delta_p_fr, Delta_p_exit, Delta_p_core };
}

/** From before the cooler to behind it; undefined where the air does not pass. */
function pass(core: Core, air: Air, m: SI, trace: Trace): CoreLoss | undefined {
  const before = inletOf(core, air, m, plain);
  const settled = behindCore(core, air, before);
  if (settled === undefined) return undefined;
  if (core.headers) {
    const { T_3: T, R_m } = air;
    const last = lossOfHeader(core.headers.outlet, { p: settled, T, R_m, m }, plain, "");
    if (last >= settled) return undefined;
  }

  const inlet = inletOf(core, air, m, trace);
  const found = lossAt(core, air, inlet, settled, trace);
  const { Delta_p_core } = found;
  const p_out = trace.use(pressureAfterLoss, { p_in: inlet.p_in, Delta_p: Delta_p_core }, "core");
  const T_mean = trace.use(coreMeanTemperature, { T_in: air.T_2, T_out: air.T_3 }, "core");
  const mu = trace.use(viscosity, { T: T_mean }, "core, mean temperature");
  const Re = trace.use(coreReynolds, { G: inlet.G, D_h: core.D_h, mu }, "passages of the core");
  const { G, rho_in, K_c, K_e, Delta_p_hd_in } = inlet;
  const common = { ...found, G, Re, rho_in, K_c, K_e };
  if (!core.headers || Delta_p_hd_in === undefined)
    return {
      ...common,
      Delta_p_23: Delta_p_core,
      p_3: p_out,
      Delta_p_hd_in: undefined,
      Delta_p_hd_out: undefined,
      s_hd: undefined,
    };

  const behind = { p: p_out, T: air.T_3, R_m: air.R_m, m };
  const Delta_p_hd_out = lossOfHeader(core.headers.outlet, behind, trace, "outlet header");
  const p_3 = trace.use(pressureAfterLoss, { p_in: p_out, Delta_p: Delta_p_hd_out }, "outlet header");
  const headers = { hd_in: Delta_p_hd_in, hd_out: Delta_p_hd_out };
  const Delta_p_23 = trace.use(coolerLoss, { ...headers, core: Delta_p_core }, "cooler");
  const s_hd =
    Delta_p_23 > 0 ? trace.use(headerShare, { ...headers, Delta_p: Delta_p_23 }, "cooler") : undefined;
  return { ...common, Delta_p_23, p_3, Delta_p_hd_in, Delta_p_hd_out, s_hd };
}

/** What is left of the pressure before the core once the air had the speed at which a gas of one temperature chokes. */
const spareSpeed = ({ p_in, G }: Inlet, { R_m, T_2 }: Air): SI => p_in - G * Math.sqrt(R_m * T_2);

/** The pressure behind the core; undefined where the air does not pass. */
const behindCore = (core: Core, air: Air, inlet: Inlet): SI | undefined =>
  spareSpeed(inlet, air) > 0
    ? pressureLeft(inlet.p_in, (p) => lossAt(core, air, inlet, p, plain).Delta_p_core)
    : undefined;

/** How much pressure is to spare at a flow: below zero where the air does not pass. */
function margin(core: Core, air: Air, m: SI): SI {
  const inlet = inletOf(core, air, m, plain);
  const p_out = behindCore(core, air, inlet);
  if (p_out === undefined) return -air.p_2;
  if (!core.headers) return p_out;
  const behind = { p: p_out, T: air.T_3, R_m: air.R_m, m };
  return p_out - lossOfHeader(core.headers.outlet, behind, plain, "");
}

function lossOfHeader(
  header: { readonly K: SI; readonly d: SI },
  air: { readonly p: SI; readonly T: SI; readonly R_m: SI; readonly m: SI },
  trace: Trace,
  where: string,
): SI {
  const { p, T, R_m, m } = air;
  const A = trace.use(boreArea, { d: header.d }, where);
  const rho = trace.use(density, { p, R_m, T }, where);
  const c = trace.use(ductSpeed, { m_a: m, rho, A }, where);
  return trace.use(fittingLoss, { K: header.K, rho, c }, where);
}
