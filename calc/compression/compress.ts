import { enthalpy } from "../fluids/enthalpy.ts";
import { temperatureEntropy } from "../fluids/temperature-entropy.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { actualEnthalpy } from "./actual-enthalpy.ts";
import { constantHeatCapacity } from "./constant-heat-capacity.ts";
import { constantIsentropicEfficiency } from "./constant-isentropic-efficiency.ts";
import { constantIsentropicTemperature } from "./constant-isentropic-temperature.ts";
import { constantOutletTemperature } from "./constant-outlet-temperature.ts";
import { constantPolytropicEfficiency } from "./constant-polytropic-efficiency.ts";
import { constantPolytropicTemperature } from "./constant-polytropic-temperature.ts";
import { constantWork } from "./constant-work.ts";
import { isentropicEfficiency } from "./isentropic-efficiency.ts";
import { isentropicTemperature } from "./isentropic-temperature.ts";
import { outletTemperature } from "./outlet-temperature.ts";
import { polytropicEfficiency } from "./polytropic-efficiency.ts";
import { polytropicTemperature } from "./polytropic-temperature.ts";
import { specificWork } from "./specific-work.ts";

/** How good the compressor is, and which heat capacity is used. Only the efficiency that is chosen is looked at. */
export interface CompressorGiven {
  readonly efficiency: "isentropic" | "polytropic";
  readonly eta_s?: SI | undefined;
  readonly eta_p?: SI | undefined;
  readonly heatCapacity: "real" | "constant";
  readonly kappa?: SI | undefined;
}

/** A compressor whose data were checked. */
export type Compressor = (
  | { readonly efficiency: "isentropic"; readonly eta: SI }
  | { readonly efficiency: "polytropic"; readonly eta: SI }
) &
  ({ readonly heatCapacity: "real" } | { readonly heatCapacity: "constant"; readonly kappa: SI });

/** Air at the inlet and the ratio: K, kg/kg, J/(kg K). */
export interface Compression {
  readonly T_in: SI;
  readonly w: SI;
  readonly R_m: SI;
  readonly r: SI;
}

/** K, J/kg. An efficiency is missing where there is no compression to speak of. `c_p` only with constant heat capacity. */
export interface Compressed {
  readonly T_s: SI;
  readonly T_out: SI;
  readonly Delta_h: SI;
  readonly eta_s: SI | undefined;
  readonly eta_p: SI | undefined;
  readonly h_out: SI | undefined;
  readonly c_p: SI | undefined;
}

// Below these the air would leave thousands of degrees hot; no machine that compresses is so poor.
const LOWEST = { isentropic: 0.1, polytropic: 0.25 } as const;
/** Nearer to 1 than this a ratio of two vanishing rises has no meaning. */
const NO_COMPRESSION = 1 + 1e-6;
/** Nearer to 1 than this a ratio is 1 but for the rounding of its pressures, or of the search that found it. */
const NO_RATIO = 1 + 1e-12;

/** The inputs that hold the efficiency, for messages. */
export type CompressorFields = Readonly<Record<"eta_s" | "eta_p", string>>;
const SAME: CompressorFields = { eta_s: "eta_s", eta_p: "eta_p" };

/** Checks efficiency and heat-capacity ratio; throws a DomainError that names the efficiency's field or kappa. */
export function acceptCompressor(given: CompressorGiven, fields = SAME): Compressor {
  const { efficiency } = given;
  const [key, what] =
    efficiency === "isentropic"
      ? (["eta_s", "The isentropic efficiency"] as const)
      : (["eta_p", "The polytropic efficiency"] as const);
  const field = fields[key];
  const eta = given[key];
  refuse(
    eta !== undefined && eta <= 0,
    field,
    `${what} is not above zero, so no amount of work would compress the air. It may be as low as the bound.`,
    { value: LOWEST[efficiency], kind: "fraction" },
  );
  refuse(
    eta !== undefined && eta > 1,
    field,
    `${what} is above that of a perfect compressor. It may be as high as the bound.`,
    { value: 1, kind: "fraction" },
  );
  const machine = {
    efficiency,
    eta: accept(field, what, eta, { kind: "fraction", atLeast: LOWEST[efficiency] }),
  };
  if (given.heatCapacity === "real") return { ...machine, heatCapacity: "real" };
  const kappa = accept("kappa", "The heat-capacity ratio", given.kappa, {
    kind: "ratio",
    atLeast: 1.05,
    atMost: 1.67,
  });
  return { ...machine, heatCapacity: "constant", kappa };
}

/**
 * One compression of air. With real heat capacity by entropy and enthalpy, with constant heat capacity by the
 * textbook powers; by isentropic or by polytropic efficiency. The trace follows the choice. At a ratio of 1 the air
 * leaves exactly as it came, and a note says so.
 */
export function compress(machine: Compressor, state: Compression, trace: Trace, where: string): Compressed {
  if (state.r < NO_RATIO) return passThrough(machine, state, trace, where);
  return machine.heatCapacity === "real"
    ? compressReal(machine, state, trace, where)
    : compressConstant({ ...machine, kappa: machine.kappa }, state, trace, where);
}

/** No inverse is asked here: it would give the inlet temperature back but for its last bits, and heat out of nothing. */
function passThrough(machine: Compressor, state: Compression, trace: Trace, where: string): Compressed {
  const { T_in, w, R_m } = state;
  trace.note({
    about: where,
    says: "The pressure after the compressor is the one before it, so the compressor does nothing: the air leaves as it came.",
  });
  const isentropic = machine.efficiency === "isentropic";
  const same = {
    T_s: T_in,
    T_out: T_in,
    eta_s: isentropic ? machine.eta : undefined,
    eta_p: isentropic ? undefined : machine.eta,
  };
  if (machine.heatCapacity === "real") {
    const h_in = trace.use(enthalpy, { T: T_in, w }, `${where}, inlet`);
    const Delta_h = trace.use(specificWork, { h_in, h_out: h_in }, where);
    return { ...same, Delta_h, h_out: h_in, c_p: undefined };
  }
  const c_p = trace.use(constantHeatCapacity, { R_m, kappa: machine.kappa }, where);
  const Delta_h = trace.use(constantWork, { c_p, T_in, T_out: T_in }, where);
  return { ...same, Delta_h, h_out: undefined, c_p };
}

function compressReal(machine: Compressor, state: Compression, trace: Trace, where: string): Compressed {
  const { T_in, w, R_m, r } = state;
  const s_in = trace.use(temperatureEntropy, { T: T_in, w }, `${where}, inlet`);
  const h_in = trace.use(enthalpy, { T: T_in, w }, `${where}, inlet`);
  const T_s = trace.use(isentropicTemperature, { s_in, R_m, r, w }, where);
  const h_s = trace.use(enthalpy, { T: T_s, w }, `${where}, ideal outlet`);
  if (machine.efficiency === "isentropic") {
    const eta_s = machine.eta;
    const h_out = trace.use(actualEnthalpy, { h_in, h_s, eta_s }, where);
    const T_out = trace.use(outletTemperature, { h_out, w }, where);
    const Delta_h = trace.use(specificWork, { h_in, h_out }, where);
    const s_out = trace.use(temperatureEntropy, { T: T_out, w }, `${where}, outlet`);
    const eta_p =
      r < NO_COMPRESSION ? undefined : trace.use(polytropicEfficiency, { R_m, r, s_in, s_out }, where);
    return { T_s, T_out, Delta_h, eta_s, eta_p, h_out, c_p: undefined };
  }
  const eta_p = machine.eta;
  const T_out = trace.use(polytropicTemperature, { s_in, R_m, r, eta_p, w }, where);
  const h_out = trace.use(enthalpy, { T: T_out, w }, `${where}, outlet`);
  const Delta_h = trace.use(specificWork, { h_in, h_out }, where);
  const eta_s = r < NO_COMPRESSION ? undefined : trace.use(isentropicEfficiency, { h_in, h_s, h_out }, where);
  return { T_s, T_out, Delta_h, eta_s, eta_p, h_out, c_p: undefined };
}

function compressConstant(
  machine: Compressor & { readonly kappa: SI },
  state: Compression,
  trace: Trace,
  where: string,
): Compressed {
  const { T_in, R_m, r } = state;
  const { kappa, eta } = machine;
  const c_p = trace.use(constantHeatCapacity, { R_m, kappa }, where);
  const T_s = trace.use(constantIsentropicTemperature, { T_in, r, kappa }, where);
  const isentropic = machine.efficiency === "isentropic";
  const T_out = isentropic
    ? trace.use(constantOutletTemperature, { T_in, T_s, eta_s: eta }, where)
    : trace.use(constantPolytropicTemperature, { T_in, r, kappa, eta_p: eta }, where);
  const Delta_h = trace.use(constantWork, { c_p, T_in, T_out }, where);
  const none = r < NO_COMPRESSION;
  const other = none
    ? undefined
    : isentropic
      ? trace.use(constantPolytropicEfficiency, { kappa, r, T_in, T_out }, where)
      : trace.use(constantIsentropicEfficiency, { T_in, T_s, T_out }, where);
  const [eta_s, eta_p] = isentropic ? [eta, other] : [other, eta];
  return { T_s, T_out, Delta_h, eta_s, eta_p, h_out: undefined, c_p };
}
