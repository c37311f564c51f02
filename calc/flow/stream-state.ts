import { outletTemperature } from "../compression/outlet-temperature.ts";
import { density } from "../fluids/density.ts";
import { enthalpy } from "../fluids/enthalpy.ts";
import { heatCapacity } from "../fluids/heat-capacity.ts";
import { heatCapacityRatio } from "../fluids/heat-capacity-ratio.ts";
import { temperatureEntropy } from "../fluids/temperature-entropy.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { gaussLegendre } from "../numerics/gauss-legendre.ts";
import { refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { airSpeedOfSound } from "./air-speed-of-sound.ts";
import { ductSpeed } from "./duct-speed.ts";
import { machNumber } from "./mach-number.ts";
import { staticEnthalpy } from "./static-enthalpy.ts";
import { staticPressure } from "./static-pressure.ts";
import { totalEnthalpy } from "./total-enthalpy.ts";
import { totalPressure } from "./total-pressure.ts";
import { totalTemperatureFromProbe } from "./total-temperature-from-probe.ts";

/**
 * What is known of a stream: its flow in kg/s, its area in m², its humidity ratio and gas constant, and one pressure in Pa
 * absolute and one temperature in K with what they are. A probe has a recovery factor above 0 and up to 1.
 */
export interface StreamGiven {
  readonly A: SI;
  readonly w: SI;
  readonly R_m: SI;
  readonly pressure: "static" | "total";
  readonly p: SI;
  readonly temperature: "total" | "static" | "probe";
  readonly T: SI;
  readonly r_rec?: SI | undefined;
}

/** Both pressures in Pa absolute and both temperatures in K, density in kg/m³ and speeds in m/s at the static state. */
export interface Stream {
  readonly p_stat: SI;
  readonly p_tot: SI;
  readonly T_stat: SI;
  readonly T_tot: SI;
  readonly rho: SI;
  readonly c: SI;
  readonly kappa: SI;
  readonly Ma: SI;
}

interface State {
  readonly T_stat: SI;
  readonly T_tot: SI;
  readonly p_stat: SI;
  /** Twice the energy of the speed, J/kg. */
  readonly square: SI;
  readonly m: SI;
}

/** Past this part of the temperature that is known a rise from static to total is that of a stream faster than sound. */
const FASTEST = 0.3;
const TOLERANCE = 1e-15;
const LIMIT = 200;
/** Exact for the powers of the temperature in the heat capacity. */
const rule = gaussLegendre(3);

/** How much of the rise from static to total the known temperature has in it. */
const shareOf = ({ temperature, r_rec = 1 }: StreamGiven): number =>
  temperature === "total" ? 1 : temperature === "static" ? 0 : r_rec;

/** The stream whose temperature rises by `rise` K when it is brought to rest. All follows from it without a search. */
function stateAt(given: StreamGiven, rise: number): State {
  const { A, w, R_m, p, T, pressure } = given;
  const share = shareOf(given);
  const T_stat = T - share * rise;
  const T_tot = T + (1 - share) * rise;
  const s = (at: SI) => temperatureEntropy.compute({ T: at, w });
  const p_stat =
    pressure === "static" ? p : staticPressure.compute({ p_tot: p, s_stat: s(T_stat), s_tot: s(T_tot), R_m });
  // The difference of two enthalpies would lose the digits of a slow stream.
  const c_p = rule.nodes.reduce(
    (sum, at, i) => sum + (rule.weights[i] ?? 0) * heatCapacity.compute({ T: T_stat + at * rise, w }),
    0,
  );
  const square = 2 * c_p * rise;
  return { T_stat, T_tot, p_stat, square, m: (p_stat * A * Math.sqrt(square)) / (R_m * T_stat) };
}

/**
 * Above zero while the flow still grows with the speed. With a static pressure given that is until the speed of sound; with
 * a total pressure until the slope of the flow is zero, which is the speed of sound too where the total temperature is
 * given, and a little below it where another is.
 */
function growth(given: StreamGiven, rise: number): number {
  const { w, R_m } = given;
  const { T_stat, T_tot, square } = stateAt(given, rise);
  const cp = (T: SI) => heatCapacity.compute({ T, w });
  const cpStat = cp(T_stat);
  if (given.pressure === "static")
    return heatCapacityRatio.compute({ c_p: cpStat, R_m }) * R_m * T_stat - square;
  const share = shareOf(given);
  const cpTot = cp(T_tot);
  const pressureFalls = ((share * cpStat) / T_stat + ((1 - share) * cpTot) / T_tot) / R_m;
  return (1 - share) * cpTot + share * cpStat - square * (pressureFalls - share / T_stat);
}

const fastestRise = (given: StreamGiven): number =>
  bracketedRoot((rise) => growth(given, rise), 0, FASTEST * given.T, { tolerance: TOLERANCE * given.T });

/** The most that an area passes, kg/s: at the speed of sound, or a little below it (see `growth`). */
export const mostThrough = (given: StreamGiven): SI => stateAt(given, fastestRise(given)).m;

/**
 * The whole state of a stream slower than sound, from its flow, one pressure and one temperature, with the heat capacity as
 * it is. The rise from static to total is searched, and its last pass is what the trace records.
 *
 * Throws a DomainError that names m_a, with the largest flow of this area as its limit, where it does not pass so much.
 */
export function streamState(given: StreamGiven, m_a: SI, trace: Trace, where: string): Stream {
  const most = fastestRise(given);
  const m_most = stateAt(given, most).m;
  refuse(
    m_a > m_most,
    "m_a",
    "So much air does not pass through this area: it passes the most at or a little below the speed of sound. The flow may be as high as the bound. A larger area passes more.",
    { value: m_most, kind: "massFlow" },
  );
  // In the root of the rise the flow is nearly straight.
  const root = bracketedRoot((x) => stateAt(given, most * x * x).m - m_a, 0, 1, {
    tolerance: TOLERANCE,
    limit: LIMIT,
  });
  return lastPass(given, stateAt(given, most * root * root), m_a, trace, where);
}

function lastPass(given: StreamGiven, found: State, m_a: SI, trace: Trace, where: string): Stream {
  const { A, w, R_m, p, pressure } = given;
  const rho = trace.use(density, { p: found.p_stat, R_m, T: found.T_stat }, `${where}, static`);
  const c = trace.use(ductSpeed, { m_a, rho, A }, where);
  const { T_stat, T_tot } = temperatures(given, found.T_stat, c, trace, where);
  const s_stat = trace.use(temperatureEntropy, { T: T_stat, w }, `${where}, static`);
  const s_tot = trace.use(temperatureEntropy, { T: T_tot, w }, `${where}, total`);
  const [p_stat, p_tot] =
    pressure === "static"
      ? [p, trace.use(totalPressure, { p_stat: p, s_tot, s_stat, R_m }, where)]
      : [trace.use(staticPressure, { p_tot: p, s_stat, s_tot, R_m }, where), p];
  const c_p = trace.use(heatCapacity, { T: T_stat, w }, `${where}, static`);
  const kappa = trace.use(heatCapacityRatio, { c_p, R_m }, where);
  const a = trace.use(airSpeedOfSound, { kappa, R_m, T_stat }, where);
  const Ma = trace.use(machNumber, { c, a }, where);
  return { p_stat, p_tot, T_stat, T_tot, rho, c, kappa, Ma };
}

function temperatures(
  { temperature, T, w, r_rec = 1 }: StreamGiven,
  searched: SI,
  c: SI,
  trace: Trace,
  where: string,
): { readonly T_stat: SI; readonly T_tot: SI } {
  if (temperature === "static") {
    const h_stat = trace.use(enthalpy, { T, w }, `${where}, static`);
    const h_out = trace.use(totalEnthalpy, { h_stat, c }, where);
    return { T_stat: T, T_tot: trace.use(outletTemperature, { h_out, w }, `${where}, total temperature`) };
  }
  const T_tot =
    temperature === "total"
      ? T
      : trace.use(totalTemperatureFromProbe, { T_stat: searched, T_rec: T, r_rec }, where);
  const h_tot = trace.use(enthalpy, { T: T_tot, w }, `${where}, total`);
  const h_out = trace.use(staticEnthalpy, { h_tot, c }, where);
  return { T_stat: trace.use(outletTemperature, { h_out, w }, `${where}, static temperature`), T_tot };
}
