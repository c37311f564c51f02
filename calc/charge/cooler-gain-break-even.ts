import { MOST_OF_ONE } from "../compression/accept-ratio.ts";
import type { Cooler } from "../exchanger/cooler.ts";
import { coolerOutletTemperature } from "../exchanger/cooler-outlet-temperature.ts";
import { keptHumidity } from "../fluids/condensation.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { breakEvenLoss } from "./break-even-loss.ts";
import {
  type Cooled,
  compressed,
  type Engine,
  MOST_WITHOUT_COOLER,
  type Shared,
} from "./cooler-gain-engines.ts";
import { lossForDensity } from "./loss-for-density.ts";
import { type AirState, throughCooler } from "./stage.ts";

const TOLERANCE = 1e-12;

/** The same cooler with another loss in Pa. */
const withLoss = (cooler: Cooler, Delta_p: SI): Cooler =>
  cooler.kind === "none" ? cooler : { ...cooler, Delta_p };

/** The temperature with which air that enters at T_in leaves the cooler, whatever its loss. */
function outletOf(cooler: Cooler, T_in: SI, trace: Trace, where: string): SI {
  if (cooler.kind === "none") return T_in;
  if (cooler.kind === "temperature") return cooler.T_out;
  const { P, T_w_in } = cooler;
  return trace.use(coolerOutletTemperature, { T_in, P, T_w_in }, where);
}

/** Gas constant, and humidity ratio, of air from `before` when it has come to T and to such a pressure that its density is rho. */
function atDensity(
  before: AirState,
  T: SI,
  rho: SI,
  trace: Trace,
  where: string,
): { readonly R_m: SI; readonly w: SI } {
  const { w, R_m } = before;
  const kept = (p: SI, through: Trace) => keptHumidity({ T, p, w }, through, where);
  const highest = rho * R_m * T;
  if (kept(highest, plain) === w) return { R_m, w };
  // Drier air is denser at the same pressure, so that less pressure is enough.
  const tooDense = (p: SI) => p / (gasConstant.compute({ w: kept(p, plain) }) * T) - rho;
  const p = bracketedRoot(tooDense, highest * (gasConstant.compute({ w: 0 }) / R_m), highest, {
    tolerance: TOLERANCE * highest,
  });
  const w_kept = kept(p, trace);
  return { R_m: w_kept === w ? R_m : trace.use(gasConstant, { w: w_kept }, where), w: w_kept };
}

/** Loss at which the charge is only as dense as it was before the cooler; none where the cooler heats. Pa. */
export function breakEvenAtOutlet(cooled: Cooled, trace: Trace): SI | undefined {
  const { charge } = cooled;
  const { before } = cooled.path;
  if (charge.T > before.T) return undefined;
  const where = "same compressor outlet, at break-even";
  const { R_m: R_m_out } = atDensity(before, charge.T, before.rho, trace, where);
  const { p: p_in, T: T_in, R_m: R_m_in } = before;
  return trace.use(breakEvenLoss, { p_in, T_in, T_out: charge.T, R_m_in, R_m_out }, where);
}

/**
 * Loss at which the charge is no denser than that of an engine without the cooler at the same manifold pressure: the compressor
 * makes up for the loss, and heats the air the more. None where the cooler gains nothing at any loss, or something at every
 * loss up to the highest ratio. Pa.
 */
export function breakEvenAtPressure(
  shared: Shared,
  cooled: Cooled,
  other: Engine,
  trace: Trace,
): SI | undefined {
  const { inlet, stage } = shared;
  const where = "same manifold pressure, at break-even";
  const p_out = cooled.charge.p;
  const gained = (Delta_p: SI) => {
    const { air } = compressed(shared, (p_out + Delta_p) / inlet.p, plain, where);
    return throughCooler(withLoss(stage.cooler, Delta_p), air, plain, where).after.rho - other.charge.rho;
  };
  const most = MOST_WITHOUT_COOLER * inlet.p - p_out;
  if (gained(0) < 0 || gained(most) > 0) return undefined;
  trace.note({
    about: "Delta_p_pressure",
    says: "Found by search: compressor and cooler were computed for trial losses until the charge was no denser than without the cooler. The working leaves the trials out.",
  });
  const Delta_p = bracketedRoot(gained, 0, most, { tolerance: TOLERANCE * p_out });
  const r = (p_out + Delta_p) / inlet.p;
  if (r > MOST_OF_ONE)
    trace.note({
      about: "Delta_p_pressure",
      says: "To make up for it the compressor would have to work at a ratio as high as the bound. No single compressor gives such a ratio: at this pressure the loss costs work long before it costs air.",
      limit: { value: r, kind: "ratio" },
    });
  return Delta_p;
}

/**
 * Loss at which the compressor takes the power of the engine that has the same density without the cooler; none where that
 * engine's air is no hotter than the cooler would leave it. Pa.
 */
export function breakEvenAtDensity(shared: Shared, other: Engine, trace: Trace): SI | undefined {
  const { inlet, stage } = shared;
  const where = "same density, at break-even";
  const { rho } = other.charge;
  const cooledFrom = (air: AirState, through: Trace) => {
    const T_out = outletOf(stage.cooler, air.T, through, where);
    return { T_out, ...atDensity(air, T_out, rho, through, where) };
  };
  // Water that drips off in the cooler was compressed too.
  const dearer = (r: SI): SI => {
    const { air, Delta_h } = compressed(shared, r, plain, where);
    return ((1 + inlet.w) / (1 + cooledFrom(air, plain).w)) * Delta_h - other.Delta_h;
  };
  if (cooledFrom(other.charge, plain).T_out > other.charge.T) return undefined;
  const isDry = dearer(other.r) <= 0;
  const air = isDry
    ? other.charge
    : compressed(shared, bracketedRoot(dearer, 1, other.r, { tolerance: TOLERANCE }), trace, where).air;
  const { T_out, R_m } = cooledFrom(air, trace);
  return trace.use(lossForDensity, { p_in: air.p, rho, R_m, T_out }, where);
}
