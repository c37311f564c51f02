import { acceptRatio } from "../compression/accept-ratio.ts";
import { acceptCompressor, type CompressorGiven, compress } from "../compression/compress.ts";
import { outletPressure } from "../compression/outlet-pressure.ts";
import { shaftPower } from "../compression/shaft-power.ts";
import { acceptSize, type SizeGiven, USUAL_FILLING } from "../engine/cycle.ts";
import { exchangePower } from "../engine/exchange-power.ts";
import { exchangePressure } from "../engine/exchange-pressure.ts";
import { volumetricEfficiency } from "../engine/volumetric-efficiency.ts";
import { pressureAfterLoss } from "../flow/pressure-after-loss.ts";
import { acceptAirTemperature, acceptFlow, acceptHumidityRatio } from "../fluids/accept-air.ts";
import { density } from "../fluids/density.ts";
import { noteFog } from "../fluids/fog-note.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { acceptInlet, type InletGiven } from "./accept-inlet.ts";
import { noteBelowInlet } from "./manifold-note.ts";
import {
  acceptTurbine,
  driveTurbine,
  exhaustFor,
  HOTTEST_EXHAUST,
  refuseTurbine,
  remarkOnGas,
  type TurbineGiven,
} from "./turbine-drive.ts";

/**
 * Moist air through compressor and engine in kg/s with its humidity ratio, none unless given; the compressor by its inlet in Pa
 * absolute and K, its ratio, its efficiency (isentropic, with the real heat capacity, unless told) and the loss behind it in Pa,
 * or by its shaft power in W and the manifold pressure in Pa absolute; the turbine; and the engine in m³ and rev/s. How far it
 * is filled is told where the temperature in its manifold is given, K.
 */
export interface TurbineBalanceGiven
  extends InletGiven,
    Partial<CompressorGiven>,
    TurbineGiven,
    Omit<SizeGiven, "cycle"> {
  readonly m_a?: SI | undefined;
  readonly known: "ratio" | "power";
  readonly r?: SI | undefined;
  readonly Delta_p_23?: SI | undefined;
  readonly W_c?: SI | undefined;
  readonly p_m?: SI | undefined;
  readonly T_m?: SI | undefined;
}

/**
 * Pa, W, kg/s, K. `eta_v` is the volumetric efficiency on the manifold that this flow takes. `T_g_even` is the exhaust
 * temperature at which the pressure before the turbine is that in the manifold; it is left out where no exhaust of an engine
 * has it.
 */
export interface TurbineBalance {
  readonly p_T: SI;
  readonly p_m: SI;
  readonly r_T: SI;
  readonly p_gx: SI;
  readonly W_gx: SI;
  readonly eta_v: SI | undefined;
  readonly W_c: SI;
  readonly W_T: SI;
  readonly m_g: SI;
  readonly T_g_out: SI;
  readonly T_g_even: SI | undefined;
}

/**
 * How far a turbine has to hold the exhaust back to drive a compressor, and what that does to the exchange of the charge in a
 * four-stroke engine.
 *
 * Steady flow, one heat capacity of the gas. Throws a DomainError for what cannot be, and where the turbine is asked for more
 * than its gas gives: with the exhaust temperature that would do, or at the cause where no exhaust is so hot.
 *
 * @example
 * turbineBalance({ m_a: 0.154, known: "ratio", p_1: 99e3, T_1: 298.15, r: 2.2, Delta_p_23: 6e3, efficiency: "isentropic",
 *   eta_s: 0.74, heatCapacity: "real", eta_T: 0.7, eta_m: 0.97, T_g: 873.15, p_T_out: 104e3, kappa_g: 1.33, c_p_g: 1150,
 *   lambda: 1.6, AFR_st: 14.5, V_d: 4.4e-3, n: 2000 / 60 }).p_T // 194 415 Pa
 */
export const turbineBalance: Model<TurbineBalanceGiven, TurbineBalance> = (given, trace = plain) => {
  const m_a = acceptFlow("m_a", "The air flow", given.m_a);
  const w = acceptHumidityRatio("w", given.w);
  const turbine = acceptTurbine(given);
  const { V_d, n, n_R } = acceptSize({ ...given, cycle: "four-stroke" });
  const { W_c, p_m } = given.known === "ratio" ? fromRatio(given, m_a, trace) : fromPower(given);

  const load = { W_c, m_a, w };
  const state = driveTurbine(turbine, load, trace, { where: "turbine", about: "r_T" });
  if (!state) refuseTurbine(turbine, load, given.known === "ratio" ? "eta_T" : "W_c");
  remarkOnGas(turbine, trace);
  const { r_T, p_T, W_T, m_g, T_g_out, Delta_h_T } = state;
  const p_gx = trace.use(exchangePressure, { p_m, p_T }, "engine");
  const W_gx = trace.use(exchangePower, { p_gx, V_d, n, n_R }, "engine");
  const even = p_m / turbine.p_T_out;
  const isThereEven = (exhaustFor(turbine, Delta_h_T, plain, "", even) ?? HOTTEST_EXHAUST) < HOTTEST_EXHAUST;
  return {
    p_T,
    p_m,
    r_T,
    p_gx,
    W_gx,
    eta_v: fillingOf({ m_a, w, p_m, T_m: given.T_m, V_d, n, n_R }, trace),
    W_c,
    W_T,
    m_g,
    T_g_out,
    T_g_even: isThereEven
      ? exhaustFor(turbine, Delta_h_T, trace, "exhaust held at the pressure of the manifold", even)
      : undefined,
  };
};

/** The volumetric efficiency that an engine takes to draw this flow from its manifold. */
function fillingOf(
  {
    T_m,
    w,
    p_m,
    ...engine
  }: Readonly<Record<"m_a" | "w" | "p_m" | "V_d" | "n" | "n_R", SI>> & {
    readonly T_m: SI | undefined;
  },
  trace: Trace,
): SI | undefined {
  if (T_m === undefined) return undefined;
  const T = acceptAirTemperature("T_m", "The temperature in the manifold", T_m);
  const R_m = trace.use(gasConstant, { w }, "manifold");
  const rho = trace.use(density, { p: p_m, R_m, T }, "manifold");
  const eta_v = trace.use(volumetricEfficiency, { ...engine, rho }, "engine");
  const [least, most] = USUAL_FILLING;
  const tell = (limit: SI, usual: string) =>
    trace.note({
      about: "eta_v",
      says: `Engines commonly have ${usual} the bound (common practice, no source). Flow, size, speed and manifold may not belong to one state.`,
      limit: { value: limit, kind: "fraction" },
    });
  if (eta_v < least) tell(least, "at least");
  if (eta_v > most) tell(most, "at most");
  return eta_v;
}

/** Shaft power and manifold pressure from the compressor's ratio. */
function fromRatio(
  given: TurbineBalanceGiven,
  m_a: SI,
  trace: Trace,
): { readonly W_c: SI; readonly p_m: SI } {
  const inlet = acceptInlet(given);
  const { p: p_in, T: T_in, w } = inlet;
  const r = acceptRatio(given.r);
  const Delta_p = accept("Delta_p_23", "The loss behind the compressor", given.Delta_p_23 ?? 0, {
    kind: "pressureDifference",
    atLeast: 0,
  });
  const { efficiency = "isentropic", heatCapacity = "real" } = given;
  const machine = acceptCompressor({ ...given, efficiency, heatCapacity });
  noteFog(inlet, "w", trace);
  const p_2 = trace.use(outletPressure, { r, p_in }, "compressor");
  refuse(
    Delta_p >= p_2,
    "Delta_p_23",
    "The loss leaves no pressure in the manifold. It has to be below the pressure after the compressor.",
    { value: p_2, kind: "pressureDifference" },
  );
  const p_m = trace.use(pressureAfterLoss, { p_in: p_2, Delta_p }, "cooler and ducts");
  noteBelowInlet({ p_m, p_1: p_in }, "p_m", trace);
  const R_m = trace.use(gasConstant, { w }, "compressor");
  const { Delta_h } = compress(machine, { T_in, w, R_m, r }, trace, "compressor");
  return { W_c: trace.use(shaftPower, { m_a, Delta_h }, "compressor"), p_m };
}

/** Both as they were given. */
const fromPower = (given: TurbineBalanceGiven): { readonly W_c: SI; readonly p_m: SI } => ({
  W_c: accept("W_c", "The shaft power of the compressor", given.W_c, {
    kind: "power",
    atLeast: 0,
    atMost: 1e8,
  }),
  p_m: accept("p_m", "The pressure in the manifold, absolute,", given.p_m, {
    kind: "pressure",
    above: 0,
    atMost: 1e8,
  }),
});
