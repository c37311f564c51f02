import { boreArea } from "../../flow/bore-area.ts";
import { ductSpeed } from "../../flow/duct-speed.ts";
import { accept } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { type Model, plain } from "../../relation/trace.ts";
import { boreRatioForLoss } from "./bore-ratio-for-loss.ts";
import { neededLossCoefficient } from "./needed-loss-coefficient.ts";

/** A flow in kg/s of density kg/m³ in a pipe of bore `d_l` in m, and the loss in Pa that a plate shall add. */
export interface RestrictionGiven {
  readonly m?: SI | undefined;
  readonly rho?: SI | undefined;
  readonly d_l?: SI | undefined;
  readonly Delta_p?: SI | undefined;
  readonly C_D?: SI | undefined;
  readonly p_in?: SI | undefined;
}

export interface Restriction {
  readonly K: SI;
  readonly beta_d: SI;
  readonly d: SI;
}

/** Of a sharp-edged hole at a high Reynolds number; from memory. */
const SHARP_EDGE = 0.6;
/** Part of the pressure from which on a gas thins in the hole by more than its coefficient is known. Common practice. */
const THINS = 0.05;
/** Bore ratios of the standard for plates. */
const MEASURED = [0.1, 0.75] as const;

/**
 * The orifice plate that takes a wanted pressure for good, as to match the loss of another cooler. The discharge coefficient
 * is that of a sharp edge, 0.6, unless given. With the pressure of a gas before it, a large loss gets a note.
 *
 * @example restriction({ m: 0.3, rho: 2.2, d_l: 0.07, Delta_p: 12.4e3 }).d // 0.04403 m
 */
export const restriction: Model<RestrictionGiven, Restriction> = (given, trace = plain) => {
  const m = accept("m", "The flow", given.m, { kind: "massFlow", atLeast: 1e-9, atMost: 10_000 });
  const rho = accept("rho", "The density before the plate", given.rho, {
    kind: "density",
    atLeast: 1e-3,
    atMost: 3000,
  });
  const d_l = accept("d_l", "The bore of the pipe", given.d_l, { kind: "length", atLeast: 1e-4, atMost: 5 });
  const Delta_p = accept("Delta_p", "The loss that the plate shall add", given.Delta_p, {
    kind: "pressureDifference",
    atLeast: 1e-3,
    ...(given.p_in === undefined ? { atMost: 1e7 } : { below: given.p_in }),
  });
  const C_D = accept("C_D", "The discharge coefficient", given.C_D ?? SHARP_EDGE, {
    kind: "ratio",
    atLeast: 0.4,
    below: 1,
  });
  const A = trace.use(boreArea, { d: d_l }, "pipe");
  const c = trace.use(ductSpeed, { m_a: m, rho, A }, "pipe");
  const K = trace.use(neededLossCoefficient, { Delta_p, rho, c }, "plate");
  const beta_d = trace.use(boreRatioForLoss, { K, C_D }, "plate");
  if (given.p_in !== undefined && Delta_p > THINS * given.p_in)
    trace.note({
      about: "plate",
      says: "Past the bound, a twentieth of the pressure, a gas thins in the hole, and loses more than is computed here. Drill it a little larger, and measure.",
      limit: { value: THINS * given.p_in, kind: "pressureDifference" },
    });
  const [narrowest, widest] = MEASURED;
  if (beta_d < narrowest || beta_d > widest)
    trace.note({
      about: "beta_d",
      says: "The ratio of the bores is past the bound, where plates were not measured so well. A pipe of another bore, or a measurement, makes it surer.",
      limit: { value: beta_d < narrowest ? narrowest : widest, kind: "ratio" },
    });
  return { K, beta_d, d: beta_d * d_l };
};
