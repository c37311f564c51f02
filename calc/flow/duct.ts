import { gaugePressure } from "../atmosphere/gauge-pressure.ts";
import {
  acceptAbsolutePressure,
  acceptAirTemperature,
  acceptFlow,
  acceptHumidityRatio,
} from "../fluids/accept-air.ts";
import { noteFog } from "../fluids/fog-note.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { viscosity } from "../fluids/viscosity.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { bendThrust } from "./bend-thrust.ts";
import { bendsInSeries } from "./bends-in-series.ts";
import { boreArea } from "./bore-area.ts";
import { closedEndThrust } from "./closed-end-thrust.ts";
import { coefficientsInSeries } from "./coefficients-in-series.ts";
import { criticalSpeedRatio } from "./critical-speed-ratio.ts";
import {
  acceptParts,
  bendCoefficient,
  type DuctParts,
  type DuctPartsGiven,
  inletCoefficient,
  outletCoefficient,
  tabledBendCoefficient,
} from "./duct-coefficients.ts";
import { ductLoss } from "./duct-loss.ts";
import { roughnessOf, type Surface } from "./duct-surface.ts";
import { fittingLoss } from "./fitting-loss.ts";
import { LAMINAR_UP_TO, TURBULENT_FROM } from "./flow-regimes.ts";
import { frictionArgument } from "./friction-argument.ts";
import { frictionFactorAllRegimes } from "./friction-factor-all-regimes.ts";
import { frictionLeft } from "./friction-left.ts";
import { frictionNumber } from "./friction-number.ts";
import { frictionPartBeyondLaminar } from "./friction-part-beyond-laminar.ts";
import { frictionToChoking, straightened } from "./friction-to-choking.ts";
import { frictionTransitionPart } from "./friction-transition-part.ts";
import { frictionTurbulentPart } from "./friction-turbulent-part.ts";
import { machFromFrictionToChoking } from "./mach-from-friction-to-choking.ts";
import { outletLoss } from "./outlet-loss.ts";
import { pipeLoss } from "./pipe-loss.ts";
import { reynoldsNumber } from "./reynolds-number.ts";
import { staticPressureAfterFriction } from "./static-pressure-after-friction.ts";
import { mostThrough, type Stream, type StreamGiven, streamState } from "./stream-state.ts";
import { thinningLoss } from "./thinning-loss.ts";
import { totalOverStatic } from "./total-over-static.ts";
import { totalPressureAfterFriction } from "./total-pressure-after-friction.ts";
import { totalPressureLoss } from "./total-pressure-loss.ts";

/**
 * A duct of one bore. Air at its inlet: total pressure in Pa absolute, total temperature in K, humidity ratio in kg/kg (dry
 * unless given), flow in kg/s. Bore, straight length and roughness in m; loss coefficient of other parts; barometer in Pa.
 */
export interface DuctGiven extends DuctPartsGiven {
  readonly p_in: SI;
  readonly T_in: SI;
  readonly w?: SI | undefined;
  readonly m_a: SI;
  readonly L: SI;
  readonly surface: Surface;
  readonly k_s?: SI | undefined;
  readonly K_o: SI;
  readonly p_0: SI;
}

/** Pa absolute and Pa, m/s, m, kg/s, N. The five losses, and `Delta_p_inc` their sum, are with the density at the inlet. */
export interface Duct {
  readonly Delta_p_tot: SI;
  readonly p_tot_out: SI;
  readonly p_stat_out: SI;
  readonly Delta_p_inlet: SI;
  readonly Delta_p_wall: SI;
  readonly Delta_p_bends: SI;
  readonly Delta_p_other: SI;
  readonly Delta_p_outlet: SI;
  readonly Delta_p_inc: SI;
  readonly Delta_p_thin: SI;
  readonly c: SI;
  readonly Ma_in: SI;
  readonly Ma_end: SI;
  readonly Re: SI;
  readonly k_s: SI;
  readonly f: SI;
  readonly K_1: SI;
  readonly K_1_other: SI | undefined;
  readonly m_star: SI;
  readonly F_b: SI;
  readonly F_e: SI;
}

/** What was checked and does not depend on the flow. */
interface Fixed {
  readonly stream: StreamGiven;
  readonly d: SI;
  readonly L: SI;
  readonly k_s: SI;
  readonly K_o: SI;
  readonly parts: DuctParts;
}

/** The inlet, and what the duct costs in multiples of the dynamic pressure. */
interface Friction {
  readonly inlet: Stream;
  readonly Re: SI;
  readonly f: SI;
  readonly K_1: SI;
  readonly K_b: SI;
  readonly K_ent: SI;
  readonly Lambda: SI;
}

/** Common practice, no source: faster than this, one density is no longer good enough for a duct. */
const FAST = 0.2;
/** So small a part of what the bare bore passes is no flow. */
const NO_FLOW = 1e-9;
const TOLERANCE = 1e-14;

/**
 * The pressure that a duct costs: item by item with the density at its inlet, and as a whole with air that thins on its
 * way. For the latter the loss coefficients are lumped with the friction of the wall, and the flow is that of a pipe of one
 * bore without heat, with the heat-capacity ratio of the inlet; the outlet follows on what is left at the end of the bore.
 *
 * Flow above 0, total temperature 173 to 1000 K, total pressure above 0 to 5 MPa. Throws a DomainError for what cannot be;
 * it names m_a, with the largest flow that this duct passes, where the duct would choke.
 *
 * @example
 * duct({ p_in: 260e3, T_in: 458.15, m_a: 0.35, d: 0.076, L: 3, surface: "steel", N_b: 3, bend: "smooth", theta: Math.PI / 2,
 *   R_b: 1.5, inlet: "none", outlet: "plenum", K_o: 0, p_0: 100e3 }).Delta_p_tot // 3764 Pa
 */
export const duct: Model<DuctGiven, Duct> = (given, trace = plain) => {
  const m_a = acceptFlow("m_a", "The air flow", given.m_a);
  const p_0 = accept("p_0", "The barometer", given.p_0, { kind: "pressure", above: 0, atMost: 200_000 });
  const fixed = acceptFixed(given, trace);
  const m_star = chokingFlow(fixed);
  refuse(
    m_a > m_star,
    "m_a",
    "This duct does not pass so much air: it chokes, and its end would have to be faster than sound. The flow may be as high as the bound. A wider bore, a shorter way or more pressure passes more.",
    { value: m_star, kind: "massFlow" },
  );
  const { stream, d, L, parts, K_o } = fixed;
  const friction = frictionAt(fixed, m_a, trace);
  const { inlet, Re, f, K_1, K_b, K_ent } = friction;
  const K_x = outletCoefficient(parts.outlet, d, trace);
  const { rho, c } = inlet;
  const cost = (coefficient: SI, where: string) =>
    coefficient === 0 ? 0 : trace.use(fittingLoss, { K: coefficient, rho, c }, where);
  const losses = {
    Delta_p_inlet: cost(K_ent, "inlet"),
    Delta_p_wall: trace.use(pipeLoss, { f, L, d, rho, c }, "straight lengths"),
    Delta_p_bends: cost(K_b, "all bends"),
    Delta_p_other: cost(K_o, "other parts"),
    Delta_p_outlet: cost(K_x, "outlet"),
  };
  const Delta_p_inc = trace.use(ductLoss, losses, "duct");

  const end = endOfBore(friction, trace);
  const out = afterOutlet(end, K_x, fixed, m_a, trace);
  const Delta_p_tot = trace.use(totalPressureLoss, { p_tot_in: stream.p, p_tot_out: out.p_tot }, "duct");
  remark(Re, end.Ma, trace);
  noteFog({ T: inlet.T_stat, p: inlet.p_stat, w: stream.w }, "w", trace);
  noteRealGas({ p: inlet.p_stat, T: inlet.T_stat }, "Delta_p_inc", trace);
  return {
    Delta_p_tot,
    p_tot_out: out.p_tot,
    p_stat_out: out.p_stat,
    ...losses,
    Delta_p_inc,
    Delta_p_thin: trace.use(thinningLoss, { Delta_p_tot, Delta_p_inc }, "duct"),
    c,
    Ma_in: inlet.Ma,
    Ma_end: end.Ma,
    Re,
    k_s: fixed.k_s,
    f,
    K_1,
    K_1_other: tabledBendCoefficient(parts.bend, d, trace),
    m_star,
    ...thrusts(inlet, fixed, m_a, p_0, trace),
  };
};

function acceptFixed(given: DuctGiven, trace: Trace): Fixed {
  const p = acceptAbsolutePressure("p_in", "The total pressure at the inlet, absolute,", given.p_in);
  const T = acceptAirTemperature("T_in", "The total temperature at the inlet", given.T_in);
  const w = acceptHumidityRatio("w", given.w);
  const d = accept("d", "The bore", given.d, { kind: "length", above: 0, atMost: 10 });
  const L = accept("L", "The straight length", given.L, { kind: "pipeLength", atLeast: 0, atMost: 10_000 });
  const k_s =
    given.surface === "given"
      ? accept("k_s", "The roughness", given.k_s, { kind: "length", atLeast: 0, atMost: 0.1 })
      : roughnessOf[given.surface];
  // Past this the wall is no longer rough, the bore is smaller; the formulas were found up to here.
  refuse(
    k_s > d / 20,
    given.surface === "given" ? "k_s" : "d",
    given.surface === "given"
      ? "The roughness is more than a twentieth of the bore, and no formula was found for that. It may be as high as the bound."
      : "The bore is less than twenty times the roughness of this wall, and no formula was found for that. It may be as low as the bound.",
    { value: given.surface === "given" ? d / 20 : 20 * k_s, kind: "length" },
  );
  const K_o = accept("K_o", "The loss coefficient of other parts", given.K_o, {
    kind: "ratio",
    atLeast: 0,
    atMost: 1e4,
  });
  const parts = acceptParts(given);
  const A = trace.use(boreArea, { d }, "duct");
  const R_m = trace.use(gasConstant, { w }, "duct");
  const stream: StreamGiven = { A, w, R_m, pressure: "total", p, temperature: "total", T };
  return { stream, d, L, k_s, K_o, parts };
}

/** The state at the inlet, the friction factor, and the coefficients of all that has the bore of the duct. */
function frictionAt({ stream, d, L, k_s, K_o, parts }: Fixed, m_a: SI, trace: Trace): Friction {
  const inlet = streamState(stream, m_a, trace, "duct inlet");
  const mu = trace.use(viscosity, { T: inlet.T_stat }, "duct inlet");
  const Re = trace.use(reynoldsNumber, { rho: inlet.rho, c: inlet.c, d, mu }, "duct");
  const Theta_k = trace.use(frictionArgument, { Re, k_s, d }, "duct");
  const Theta_t = trace.use(frictionTurbulentPart, { Theta_k }, "duct");
  const Theta_l = trace.use(frictionTransitionPart, { Re }, "duct");
  const Theta = trace.use(frictionPartBeyondLaminar, { Theta_t, Theta_l }, "duct");
  const f = trace.use(frictionFactorAllRegimes, { Re, Theta }, "duct");
  const K_1 = bendCoefficient(parts.bend, f, trace);
  const K_b = trace.use(bendsInSeries, { N_b: parts.N_b, K_1 }, "all bends");
  const K_ent = inletCoefficient(parts.inlet, d, f, trace);
  const K = trace.use(coefficientsInSeries, { K_ent, K_b, K_o }, "duct");
  const Lambda = trace.use(frictionNumber, { f, L, d, K }, "duct");
  return { inlet, Re, f, K_1, K_b, K_ent, Lambda };
}

/** The largest flow in kg/s: there the friction number of the duct is just what the stream takes until it chokes. */
function chokingFlow(fixed: Fixed): SI {
  const bare = mostThrough(fixed.stream);
  const beyond = (m: SI) => {
    const { inlet, Lambda } = frictionAt(fixed, m, plain);
    const { Ma, kappa } = inlet;
    return straightened(frictionToChoking.compute({ Ma, kappa })) - straightened(Lambda);
  };
  // The bare bore chokes at its own inlet; rounding may leave the sum there a last digit short of zero.
  if (beyond(bare) <= 0) return bare;
  return bracketedRoot(beyond, NO_FLOW * bare, bare, { tolerance: TOLERANCE * bare });
}

interface End {
  readonly p_stat: SI;
  readonly p_tot: SI;
  readonly Ma: SI;
}

/** The end of the bore, before any outlet. Without friction it is the inlet, to the last digit. */
function endOfBore({ inlet, Lambda }: Friction, trace: Trace): End {
  const { kappa, p_stat: p_stat_in, p_tot: p_tot_in, Ma: Ma_in } = inlet;
  if (Lambda === 0) return { p_stat: p_stat_in, p_tot: p_tot_in, Ma: Ma_in };
  const Lambda_star = trace.use(frictionToChoking, { Ma: Ma_in, kappa }, "duct inlet");
  const left = trace.use(frictionLeft, { Lambda_in: Lambda_star, Lambda }, "end of the bore");
  // At the largest flow nothing is left, and rounding may make it less.
  const Lambda_left = Math.max(left, 0);
  const Ma_end = trace.use(machFromFrictionToChoking, { Lambda_left, kappa }, "end of the bore");
  const chi_in = trace.use(criticalSpeedRatio, { Ma: Ma_in, kappa }, "duct inlet");
  const chi_end = trace.use(criticalSpeedRatio, { Ma: Ma_end, kappa }, "end of the bore");
  const p_stat_end = trace.use(
    staticPressureAfterFriction,
    { p_stat_in, chi_in, chi_end, Ma_in, Ma_end },
    "duct",
  );
  const Pi_in = trace.use(totalOverStatic, { Ma: Ma_in, kappa }, "duct inlet");
  const Pi_end = trace.use(totalOverStatic, { Ma: Ma_end, kappa }, "end of the bore");
  const p_tot_end = trace.use(
    totalPressureAfterFriction,
    { p_tot_in, p_stat_in, p_stat_end, Pi_in, Pi_end },
    "duct",
  );
  return { p_stat: p_stat_end, p_tot: p_tot_end, Ma: Ma_end };
}

function afterOutlet(
  end: End,
  K: SI,
  { stream, parts }: Fixed,
  m_a: SI,
  trace: Trace,
): Pick<End, "p_stat" | "p_tot"> {
  if (parts.outlet.kind === "none" || K === 0) return end;
  const p_tot = trace.use(outletLoss, { p_tot_end: end.p_tot, K, p_stat_end: end.p_stat }, "outlet");
  if (parts.outlet.kind === "plenum") return { p_stat: p_tot, p_tot };
  const A = trace.use(boreArea, { d: parts.outlet.d_l }, "after the outlet");
  return { p_stat: streamState({ ...stream, A, p: p_tot }, m_a, trace, "after the outlet").p_stat, p_tot };
}

function thrusts(
  inlet: Stream,
  { stream, parts }: Fixed,
  m_a: SI,
  p_0: SI,
  trace: Trace,
): Pick<Duct, "F_b" | "F_e"> {
  const { A, p } = stream;
  const gauge = trace.use(gaugePressure, { p, p_0 }, "closed end, total pressure");
  const F_e = trace.use(closedEndThrust, { p_g: gauge, A }, "closed end");
  const p_g = trace.use(gaugePressure, { p: inlet.p_stat, p_0 }, "bend at the inlet, static pressure");
  const { theta } = parts.bend;
  const F_b = trace.use(bendThrust, { p_g, A, m_a, c: inlet.c, theta }, "bend at the inlet");
  const inward = "It is negative: suction pulls inward.";
  if (F_b < 0) trace.note({ about: "F_b", says: inward });
  if (F_e < 0) trace.note({ about: "F_e", says: inward });
  return { F_b, F_e };
}

function remark(Re: SI, Ma_end: SI, trace: Trace): void {
  if (Ma_end > FAST)
    trace.note({
      about: "Ma_end",
      says: "The air is faster at the end of the bore than the bound. One density is no longer good enough for the loss, and common practice, no source, keeps ducts slower. The total pressure lost counts the thinning of the air.",
      limit: { value: FAST, kind: "ratio" },
    });
  if (Re > LAMINAR_UP_TO && Re < TURBULENT_FROM)
    trace.note({
      about: "Re",
      says: "The flow is neither laminar nor turbulent, and may change from one to the other. Its friction is uncertain.",
    });
}
