import { density } from "../fluids/density.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { acceptCompressor, type CompressorGiven, compress } from "./compress.ts";
import { densityRatio } from "./density-ratio.ts";
import { outletPressure } from "./outlet-pressure.ts";
import { pressureRatio } from "./pressure-ratio.ts";
import { shaftPower } from "./shaft-power.ts";

/**
 * Inlet in Pa absolute, K and kg/kg (dry unless given); the boost as a pressure ratio or as an outlet pressure in Pa
 * absolute; and a flow in kg/s where the shaft power is wanted.
 */
export interface CompressorOutletGiven extends CompressorGiven {
  readonly p_in: SI;
  readonly T_in: SI;
  readonly w?: SI | undefined;
  readonly boost: "ratio" | "pressure";
  readonly r?: SI | undefined;
  readonly p_out?: SI | undefined;
  readonly m_a?: SI | undefined;
}

/** Pa, K, J/kg, kg/m³, W. `T_out_other` is the outlet temperature by the heat-capacity model that was not chosen. */
export interface CompressorOutlet {
  readonly r: SI;
  readonly p_out: SI;
  readonly T_s: SI;
  readonly T_out: SI;
  readonly T_out_other: SI;
  readonly Delta_h: SI;
  readonly eta_s: SI | undefined;
  readonly eta_p: SI | undefined;
  readonly rho_in: SI;
  readonly rho_out: SI;
  readonly D_rho: SI;
  readonly W_c: SI | undefined;
}

/** The heat-capacity ratio of textbooks, for the comparison when none is given. Common practice, no source. */
const USUAL_KAPPA = 1.4;
const LOWEST_RATIO = 1;
const HIGHEST_RATIO = 50;

/**
 * The state of air after one compressor.
 *
 * Inlet 173 to 1000 K, above 0 to 5 MPa; ratio 1 to 50; efficiency up to 1. Throws a DomainError for what cannot be.
 *
 * @example
 * compressorOutlet({ p_in: 99e3, T_in: 298.15, boost: "ratio", r: 2.2,
 *   efficiency: "isentropic", eta_s: 0.74, heatCapacity: "real" }).T_out // 399.51 K
 */
export const compressorOutlet: Model<CompressorOutletGiven, CompressorOutlet> = (given, trace = plain) => {
  const p_in = accept("p_in", "The inlet pressure, absolute,", given.p_in, {
    kind: "pressure",
    above: 0,
    atMost: 5e6,
  });
  const T_in = accept("T_in", "The inlet temperature", given.T_in, {
    kind: "temperature",
    atLeast: 173.15,
    atMost: 1000,
  });
  const w = accept("w", "The humidity ratio", given.w ?? 0, { kind: "humidityRatio", atLeast: 0, atMost: 1 });
  const { r, p_out } = boost({ ...given, p_in }, trace);
  const machine = acceptCompressor(given);

  const R_m = trace.use(gasConstant, { w }, "compressor");
  const state = { T_in, w, R_m, r };
  const done = compress(machine, state, trace, "compressor");
  const other = compress(
    machine.heatCapacity === "real"
      ? { ...machine, heatCapacity: "constant", kappa: USUAL_KAPPA }
      : { efficiency: machine.efficiency, eta: machine.eta, heatCapacity: "real" },
    state,
    plain,
    "compressor",
  );
  const { T_s, T_out, Delta_h, eta_s, eta_p } = done;
  const rho_in = trace.use(density, { p: p_in, R_m, T: T_in }, "compressor inlet");
  const rho_out = trace.use(density, { p: p_out, R_m, T: T_out }, "compressor outlet");
  const D_rho = trace.use(
    densityRatio,
    { p_in, p_out, T_in, T_out, R_m_in: R_m, R_m_out: R_m },
    "over the compressor",
  );
  noteRealGas({ p: p_in, T: T_in }, "compressor inlet", trace);
  noteRealGas({ p: p_out, T: T_out }, "rho_out", trace);
  return {
    r,
    p_out,
    T_s,
    T_out,
    T_out_other: other.T_out,
    Delta_h,
    eta_s,
    eta_p,
    rho_in,
    rho_out,
    D_rho,
    W_c: power(given.m_a, Delta_h, trace),
  };
};

function boost(given: CompressorOutletGiven, trace: Trace): { readonly r: SI; readonly p_out: SI } {
  const { p_in } = given;
  if (given.boost === "ratio") {
    const r = accept("r", "The pressure ratio", given.r, {
      kind: "ratio",
      atLeast: LOWEST_RATIO,
      atMost: HIGHEST_RATIO,
    });
    return { r, p_out: trace.use(outletPressure, { r, p_in }, "compressor") };
  }
  const p_out = accept("p_out", "The outlet pressure, absolute,", given.p_out, {
    kind: "pressure",
    atMost: HIGHEST_RATIO * p_in,
  });
  refuse(
    p_out < p_in,
    "p_out",
    "The outlet pressure is below the inlet pressure, and a compressor does not lower it. Both are absolute: to a gauge reading the barometer is added. It has to be at or above the inlet pressure.",
    { value: p_in, kind: "pressure" },
  );
  return { r: trace.use(pressureRatio, { p_out, p_in }, "compressor"), p_out };
}

function power(flow: SI | undefined, Delta_h: SI, trace: Trace): SI | undefined {
  if (flow === undefined) return undefined;
  const m_a = accept("m_a", "The air flow", flow, { kind: "massFlow", atLeast: 0, atMost: 1000 });
  return trace.use(shaftPower, { m_a, Delta_h }, "compressor");
}
