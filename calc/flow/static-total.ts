import {
  acceptAbsolutePressure,
  acceptAirTemperature,
  acceptFlow,
  acceptHumidityRatio,
} from "../fluids/accept-air.ts";
import { noteFog } from "../fluids/fog-note.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import { boreArea } from "./bore-area.ts";
import { impactPressure } from "./impact-pressure.ts";
import { probeError } from "./probe-error.ts";
import { probeReading } from "./probe-reading.ts";
import { mostThrough, type StreamGiven, streamState } from "./stream-state.ts";

/**
 * Flow of moist air in kg/s; bore in m or area in m²; one pressure in Pa absolute and one temperature in K with what they
 * are; the recovery factor of the probe; humidity ratio in kg/kg (dry unless given).
 */
export interface StaticTotalGiven {
  readonly m_a: SI;
  readonly section: "bore" | "area";
  readonly d?: SI | undefined;
  readonly A?: SI | undefined;
  readonly pressure: StreamGiven["pressure"];
  readonly p: SI;
  readonly temperature: StreamGiven["temperature"];
  readonly T: SI;
  readonly r_rec: SI;
  readonly w?: SI | undefined;
}

/** Pa absolute and Pa, K, m/s, kg/m³, kg/s; `m_star` is the most that this area passes, at or a little below the speed of sound. */
export interface StaticTotal {
  readonly p_stat: SI;
  readonly p_tot: SI;
  readonly p_imp: SI;
  readonly T_stat: SI;
  readonly T_tot: SI;
  readonly T_rec: SI;
  readonly Delta_T_rec: SI;
  readonly c: SI;
  readonly Ma: SI;
  readonly rho: SI;
  readonly m_star: SI;
}

/**
 * Static and total state of the air in a duct, and what a wall tap and a bare probe make of it.
 *
 * Flow above 0, temperature 173 to 1000 K, pressure above 0 to 5 MPa, recovery factor 0.2 to 1. Throws a DomainError for
 * what cannot be; it names m_a, with the largest flow of the area, where that does not pass so much.
 *
 * @example
 * staticTotal({ m_a: 0.2271, section: "bore", d: 0.1, pressure: "total", p: 80987, temperature: "total", T: 305.15,
 *   r_rec: 0.7, w: 0.0208485 }).c // 31.79 m/s
 */
export const staticTotal: Model<StaticTotalGiven, StaticTotal> = (given, trace = plain) => {
  const m_a = acceptFlow("m_a", "The air flow", given.m_a);
  const p = acceptAbsolutePressure("p", "The pressure, absolute,", given.p);
  const T = acceptAirTemperature("T", "The temperature", given.T);
  const r_rec = accept("r_rec", "The recovery factor", given.r_rec, {
    kind: "fraction",
    atLeast: 0.2,
    atMost: 1,
  });
  const w = acceptHumidityRatio("w", given.w);
  const A =
    given.section === "area"
      ? accept("A", "The area", given.A, { kind: "area", above: 0, atMost: 100 })
      : trace.use(
          boreArea,
          { d: accept("d", "The bore", given.d, { kind: "length", above: 0, atMost: 10 }) },
          "duct",
        );
  const R_m = trace.use(gasConstant, { w }, "duct");
  const { pressure, temperature } = given;
  const known: StreamGiven = { A, w, R_m, pressure, p, temperature, T, r_rec };
  const { p_stat, p_tot, T_stat, T_tot, c, Ma, rho } = streamState(known, m_a, trace, "duct");
  noteFog({ T: T_stat, p: p_stat, w }, "w", trace, "in the duct");
  noteRealGas({ p: p_stat, T: T_stat }, "rho", trace);
  const T_rec = trace.use(probeReading, { T_stat, r_rec, T_tot }, "probe");
  return {
    p_stat,
    p_tot,
    p_imp: trace.use(impactPressure, { p_tot, p_stat }, "duct"),
    T_stat,
    T_tot,
    T_rec,
    Delta_T_rec: trace.use(probeError, { T_rec, T_tot }, "probe"),
    c,
    Ma,
    rho,
    m_star: mostThrough(known),
  };
};
