import { constantHeatCapacity } from "../compression/constant-heat-capacity.ts";
import { exhaustFlow } from "../compression/exhaust-flow.ts";
import { expansionRatio } from "../compression/expansion-ratio.ts";
import { turbineFlow } from "../compression/turbine-flow.ts";
import { turbineIdealFall } from "../compression/turbine-ideal-fall.ts";
import { turbineInletPressure } from "../compression/turbine-inlet-pressure.ts";
import { turbineNeededTemperature } from "../compression/turbine-needed-temperature.ts";
import { turbineOutletTemperature } from "../compression/turbine-outlet-temperature.ts";
import { turbinePower } from "../compression/turbine-power.ts";
import { turbineWork } from "../compression/turbine-work.ts";
import { acceptMixture, type MixtureGiven } from "../engine/cycle.ts";
import { dryAirFlow } from "../engine/dry-air-flow.ts";
import { fuelFlowFromAir } from "../engine/fuel-flow-from-air.ts";
import { accept } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";

/**
 * The turbine of a turbocharger and its gas: efficiencies, temperature before it in K, pressure after it in Pa absolute, one
 * heat-capacity ratio and heat capacity in J/(kg K), the mixture in the engine, and the share that bypasses it, none unless given.
 */
export interface TurbineGiven extends MixtureGiven {
  readonly eta_T?: SI | undefined;
  readonly eta_m?: SI | undefined;
  readonly T_g?: SI | undefined;
  readonly p_T_out?: SI | undefined;
  readonly kappa_g?: SI | undefined;
  readonly c_p_g?: SI | undefined;
  readonly x_wg?: SI | undefined;
}

/** A turbine whose data were checked. */
export type Turbine = Readonly<Record<keyof TurbineGiven, SI>>;

/** What a turbine has to drive: shaft power of the compressor in W; moist air into the engine in kg/s and its humidity ratio. */
export interface TurbineLoad {
  readonly W_c: SI;
  readonly m_a: SI;
  readonly w: SI;
}

/** kg/s, W, J/kg, Pa, K. */
export interface TurbineState {
  readonly m_g: SI;
  readonly W_T: SI;
  readonly Delta_h_T: SI;
  readonly r_T: SI;
  readonly p_T: SI;
  readonly T_g_out: SI;
}

/** No single wheel expands so far, by a wide margin; and a little further on the gas would have to expand to nothing. */
const MOST_EXPANSION = 10;
/** Exhaust hotter than this is not looked at, K. */
export const HOTTEST_EXHAUST = 1600;
/** Past this a single wheel rarely works. Common practice, no source. */
const USUAL_EXPANSION = 4;
/** Gas constants of the exhaust of usual fuels lie between these, J/(kg K). Common practice, no source. */
const USUAL_GAS_CONSTANTS = [270, 300] as const;

/** Checks the turbine's data; throws a DomainError that names one of its fields. */
export function acceptTurbine(given: TurbineGiven): Turbine {
  const part = { kind: "fraction", atLeast: 0.1, atMost: 1 } as const;
  return {
    eta_T: accept("eta_T", "The turbine efficiency", given.eta_T, part),
    eta_m: accept("eta_m", "The mechanical efficiency", given.eta_m, part),
    T_g: accept("T_g", "The exhaust temperature", given.T_g, {
      kind: "temperature",
      atLeast: 273.15,
      atMost: HOTTEST_EXHAUST,
    }),
    p_T_out: accept("p_T_out", "The pressure after the turbine, absolute,", given.p_T_out, {
      kind: "pressure",
      atLeast: 1000,
      atMost: 1e6,
    }),
    kappa_g: accept("kappa_g", "The heat-capacity ratio of the exhaust gas", given.kappa_g, {
      kind: "ratio",
      atLeast: 1.1,
      atMost: 1.67,
    }),
    c_p_g: accept("c_p_g", "The heat capacity of the exhaust gas", given.c_p_g, {
      kind: "specificHeat",
      atLeast: 500,
      atMost: 3000,
    }),
    ...acceptMixture(given),
    x_wg: accept("x_wg", "The share that bypasses the turbine", given.x_wg ?? 0, {
      kind: "fraction",
      atLeast: 0,
      atMost: 0.99,
    }),
  };
}

/** The gas of an engine that takes in the air of the load: kg/s; and the work asked of each kilogram through the turbine, J/kg. */
function workAsked(turbine: Turbine, load: TurbineLoad, trace: Trace, where: string) {
  const { lambda, AFR_st, eta_m, x_wg } = turbine;
  const m_da = trace.use(dryAirFlow, { m_a: load.m_a, w: load.w }, where);
  const m_f = trace.use(fuelFlowFromAir, { m_da, lambda, AFR_st }, where);
  const m_g = trace.use(exhaustFlow, { m_a: load.m_a, m_f }, where);
  const m_T = trace.use(turbineFlow, { m_g, x_wg }, where);
  const W_T = trace.use(turbinePower, { W_c: load.W_c, eta_m }, where);
  const Delta_h_T = trace.use(turbineWork, { W_T, m_T }, where);
  return { m_g, W_T, Delta_h_T };
}

/**
 * The turbine that drives a compressor, in steady flow: how far it has to expand its gas. `undefined` where it would have to
 * expand further than the most that is followed. `where` names the case in the working, `about` the result of which a far
 * expansion is told.
 */
export function driveTurbine(
  turbine: Turbine,
  load: TurbineLoad,
  trace: Trace,
  { where, about }: { readonly where: string; readonly about: string },
): TurbineState | undefined {
  const { eta_T, c_p_g, kappa_g, T_g, p_T_out } = turbine;
  const { m_g, W_T, Delta_h_T } = workAsked(turbine, load, trace, where);
  const theta_T = trace.use(turbineIdealFall, { Delta_h_T, eta_T, c_p_g, T_g }, where);
  if (theta_T >= 1) return undefined;
  const r_T = trace.use(expansionRatio, { theta_T, kappa_g }, where);
  if (r_T > MOST_EXPANSION) return undefined;
  if (r_T > USUAL_EXPANSION)
    trace.note({
      about,
      says: "The turbine has to expand its gas further than the bound, which a single wheel rarely does.",
      limit: { value: USUAL_EXPANSION, kind: "ratio" },
    });
  return {
    m_g,
    W_T,
    Delta_h_T,
    r_T,
    p_T: trace.use(turbineInletPressure, { r_T, p_T_out }, where),
    T_g_out: trace.use(turbineOutletTemperature, { T_g, Delta_h_T, c_p_g }, where),
  };
}

/** Says where heat capacity and heat-capacity ratio do not belong to one gas, by the gas constant that they have together. */
export function remarkOnGas({ c_p_g, kappa_g }: Turbine, trace: Trace): void {
  const [least, most] = USUAL_GAS_CONSTANTS.map((R_m) =>
    constantHeatCapacity.compute({ R_m, kappa: kappa_g }),
  );
  const tell = (limit: SI, says: string) =>
    trace.note({ about: "c_p_g", says, limit: { value: limit, kind: "specificHeat" } });
  if (least !== undefined && c_p_g < least)
    tell(
      least,
      "Together with this heat-capacity ratio that is too little for the exhaust of a usual fuel. With this ratio it may be as low as the bound.",
    );
  if (most !== undefined && c_p_g > most)
    tell(
      most,
      "Together with this heat-capacity ratio that is too much for the exhaust of a usual fuel. With this ratio it may be as high as the bound.",
    );
}

/**
 * The exhaust temperature in K at which the turbine would expand by r_T, or by the most that is followed. `undefined` where no
 * work is asked of it, or r_T is not above 1.
 */
export function exhaustFor(
  turbine: Turbine,
  Delta_h_T: SI,
  trace: Trace,
  where: string,
  r_T = MOST_EXPANSION,
): SI | undefined {
  const { eta_T, c_p_g, kappa_g } = turbine;
  if (Delta_h_T <= 0 || r_T <= 1) return undefined;
  return trace.use(turbineNeededTemperature, { Delta_h_T, eta_T, c_p_g, r_T, kappa_g }, where);
}

/**
 * Refuses a turbine that cannot drive its load: with the exhaust temperature at which it could, or, where that is hotter than
 * any exhaust, at the cause. `asked` is the input that asks for the work.
 */
export function refuseTurbine(turbine: Turbine, load: TurbineLoad, asked: string): never {
  const neededWith = (x_wg: SI): SI => {
    const { Delta_h_T } = workAsked({ ...turbine, x_wg }, load, plain, "");
    return exhaustFor(turbine, Delta_h_T, plain, "") ?? turbine.T_g;
  };
  const { x_wg } = turbine;
  const ways = x_wg > 0 ? "a better turbine, less bypass or less work" : "a better turbine or less work";
  const needed = neededWith(x_wg);
  if (needed <= HOTTEST_EXHAUST)
    throw new DomainError(
      "T_g",
      `The turbine is asked for more than it can take from this gas. Hotter exhaust, ${ways} for the compressor would do. The exhaust temperature has to be at least the bound.`,
      { value: needed, kind: "temperature" },
    );
  throw new DomainError(
    x_wg > 0 && neededWith(0) <= HOTTEST_EXHAUST ? "x_wg" : asked,
    `No exhaust is hot enough for this: the turbine would have to take more from its gas than the hottest exhaust holds. It takes ${ways} for the compressor.`,
  );
}
