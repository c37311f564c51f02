import { accept } from "../../quantity/accept.ts";
import { DomainError, type SI } from "../../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../../relation/trace.ts";
import { type Liquid, type LiquidGiven, liquidOf } from "../liquid.ts";
import { cavitationIndex } from "./cavitation-index.ts";
import { chokedDifference } from "./choked-difference.ts";
import { coefficientAlone } from "./coefficient-alone.ts";
import { combinedRecoveryFactor } from "./combined-recovery-factor.ts";
import { criticalRatioFactor } from "./critical-ratio-factor.ts";
import { effectiveCoefficient } from "./effective-coefficient.ts";
import { type Fittings, type FittingsGiven, fittingsOf } from "./fittings.ts";
import { pipingFactor } from "./piping-factor.ts";
import { pressureRatioFactor } from "./pressure-ratio-factor.ts";
import { valveFlow } from "./valve-flow.ts";
import { valveReynolds } from "./valve-reynolds.ts";

/**
 * A valve, by its flow coefficient `K_v` in m³/s at 1 bar, or the flow `V_w` in m³/s that it shall pass; its recovery factor
 * and modifier of style; Pa absolute before and behind it.
 */
export interface ControlValveGiven extends LiquidGiven, FittingsGiven {
  readonly wanted: "flow" | "coefficient";
  readonly K_v?: SI | undefined;
  readonly V_w?: SI | undefined;
  readonly p_in?: SI | undefined;
  readonly p_out?: SI | undefined;
  readonly F_L?: SI | undefined;
  readonly F_d?: SI | undefined;
}

/**
 * m³/s, Pa. Where the flow in the valve is not turbulent the formulas say too much of it. A liquid flashes where it stays
 * part vapour behind the valve.
 */
export interface ControlValve {
  readonly V_w: SI;
  readonly K_v: SI;
  readonly Delta_p_v: SI;
  readonly Delta_p_ch: SI;
  readonly Delta_p_eff: SI;
  readonly F_F: SI;
  readonly F_P: SI;
  readonly F_LP: SI;
  readonly Re_v: SI;
  readonly sigma_c: SI;
  readonly x_F: SI;
  readonly isChoked: boolean;
  readonly isFlashing: boolean;
  readonly isTurbulent: boolean;
}

/** From this Reynolds number of the valve on its flow is turbulent (IEC 60534-2-1, from memory). */
const TURBULENT_FROM = 10_000;
/** Flow coefficient in m³/h over the bore in mm squared up to which the factors for reducers hold (the same). */
const LARGEST_FOR_BORE = 0.047;
/** Recovery factors of valves lie between a well-shaped venturi and a string of many stages. */
const RECOVERY = { kind: "ratio", atLeast: 0.2, atMost: 1 } as const;

/**
 * Flow of a liquid through a control valve, or the flow coefficient that a flow needs, by IEC 60534-2-1:2011, with choking and
 * with attached reducers, without iteration to a tolerance: the factors for reducers are solved for the coefficient.
 *
 * Throws a DomainError for what cannot be; notes choking, flashing, flow that is not turbulent, and a valve too large for
 * its bore.
 *
 * @example
 * controlValve({ wanted: "coefficient", liquid: "stated", rho_w: 965.4, mu_w: 3.1472e-4, p_v: 70.1e3, p_crit: 22.12e6,
 *   fittings: "none", d_v: 0.15, V_w: 0.1, p_in: 680e3, p_out: 220e3, F_L: 0.9, F_d: 0.46 }).K_v * 3600 // 164.996 m³/h
 */
export const controlValve: Model<ControlValveGiven, ControlValve> = (given, trace = plain) => {
  const p_in = accept("p_in", "The pressure before the valve, absolute,", given.p_in, {
    kind: "pressure",
    atLeast: 1,
    atMost: 2e7,
  });
  const p_out = accept("p_out", "The pressure behind the valve, absolute,", given.p_out, {
    kind: "pressure",
    atLeast: 0,
    below: p_in,
  });
  const liquid = liquidOf(given, p_in, "p_in", trace);
  const fittings = fittingsOf(given, trace);
  const F_L = accept("F_L", "The pressure recovery factor of the valve", given.F_L, RECOVERY);
  const F_d = accept("F_d", "The modifier for the style of the valve", given.F_d ?? 1, {
    kind: "ratio",
    atLeast: 0.01,
    atMost: 1.5,
  });
  const F_F = trace.use(criticalRatioFactor, { p_v: liquid.p_v, p_crit: liquid.p_crit }, "liquid");
  const through: Through = { liquid, fittings, F_L, F_F, p_in, Delta_p_v: p_in - p_out };

  const K_v = given.wanted === "flow" ? acceptCoefficient(given.K_v) : coefficientFor(given, through, trace);
  const { F_P, F_LP } = factorsOf(through, K_v, trace);
  const { Delta_p_v } = through;
  const Delta_p_ch = trace.use(chokedDifference, { F_LP, F_P, p_in, F_F, p_v: liquid.p_v }, "valve");
  const isChoked = Delta_p_v >= Delta_p_ch;
  const Delta_p_eff = Math.min(Delta_p_v, Delta_p_ch);
  const V_w = trace.use(valveFlow, { F_P, K_v, Delta_p: Delta_p_eff, rho: liquid.rho }, "valve");
  const Re_v = trace.use(
    valveReynolds,
    { F_d, V_w, rho: liquid.rho, mu: liquid.mu, F_L, K_v, d_v: fittings.d_v },
    "valve",
  );
  const before = { p_in, p_v: liquid.p_v, Delta_p: Delta_p_v };
  const valve: ControlValve = {
    V_w,
    K_v,
    Delta_p_v,
    Delta_p_ch,
    Delta_p_eff,
    F_F,
    F_P,
    F_LP,
    Re_v,
    sigma_c: trace.use(cavitationIndex, before, "valve"),
    x_F: trace.use(pressureRatioFactor, before, "valve"),
    isChoked,
    isFlashing: p_out < liquid.p_v,
    isTurbulent: Re_v >= TURBULENT_FROM,
  };
  noteValve(valve, liquid, fittings, trace);
  return valve;
};

interface Through {
  readonly liquid: Liquid;
  readonly fittings: Fittings;
  readonly F_L: SI;
  readonly F_F: SI;
  readonly p_in: SI;
  readonly Delta_p_v: SI;
}

const acceptCoefficient = (K_v: SI | undefined): SI =>
  accept("K_v", "The flow coefficient of the valve", K_v, {
    kind: "flowCoefficient",
    atLeast: 1e-9,
    atMost: 30,
  });

function factorsOf({ fittings, F_L }: Through, K_v: SI, trace: Trace): { F_P: SI; F_LP: SI } {
  const { d_v, K_sum, K_isum } = fittings;
  if (K_sum === 0 && K_isum === 0) return { F_P: 1, F_LP: F_L };
  const F_P = trace.use(pipingFactor, { K: K_sum, K_v, d_v }, "valve");
  if (!Number.isFinite(F_P))
    throw new DomainError(
      "K_v",
      "A valve of this bore cannot have such a flow coefficient: behind it the wider pipe would give back more pressure than the valve takes.",
    );
  return { F_P, F_LP: trace.use(combinedRecoveryFactor, { F_L, K: K_isum, K_v, d_v }, "valve") };
}

/** The larger of what the flow needs without choking and with it: each formula asks for too little where the other holds. */
function coefficientFor(given: ControlValveGiven, through: Through, trace: Trace): SI {
  const V_w = accept("V_w", "The flow through the valve", given.V_w, {
    kind: "liquidFlow",
    atLeast: 1e-9,
    atMost: 10,
  });
  const { liquid, fittings, F_L, F_F, p_in, Delta_p_v } = through;
  const { d_v, K_sum, K_isum } = fittings;
  const { rho, p_v } = liquid;
  const needed = (at: Trace, Delta_p: SI, K: SI, where: string) => {
    const K_vf = at.use(effectiveCoefficient, { V_w, Delta_p, rho }, where);
    return K === 0 ? K_vf : at.use(coefficientAlone, { K_vf, K, d_v }, where);
  };
  const free = (at: Trace) => needed(at, Delta_p_v, K_sum, "valve");
  const choked = (at: Trace) => {
    const Delta_p = at.use(chokedDifference, { F_LP: F_L, F_P: 1, p_in, F_F, p_v }, "valve without reducers");
    return needed(at, Delta_p, F_L ** 2 * K_isum, "valve, choked");
  };
  return choked(plain) > free(plain) ? choked(trace) : free(trace);
}

function noteValve(valve: ControlValve, { p_v }: Liquid, { d_v }: Fittings, trace: Trace): void {
  if (valve.isFlashing)
    trace.note({
      about: "p_out",
      says: "Behind the valve the pressure is below the vapour pressure, the bound: part of the liquid stays vapour. It flashes, and wears what it meets.",
      limit: { value: p_v, kind: "pressure" },
    });
  if (valve.isChoked)
    trace.note({
      about: "Delta_p_v",
      says: "The valve is choked: from the bound on, a lower pressure behind it brings no more flow, but noise and wear. A valve with a higher recovery factor, or two drops in line, is needed.",
      limit: { value: valve.Delta_p_ch, kind: "pressureDifference" },
    });
  if (!valve.isTurbulent)
    trace.note({
      about: "Re_v",
      says: "The flow in the valve is not turbulent below the bound, and the formulas for turbulent flow promise more than it passes. A larger valve is needed.",
      limit: { value: TURBULENT_FROM, kind: "ratio" },
    });
  const largest = (LARGEST_FOR_BORE * (1e3 * d_v) ** 2) / 3600;
  if (valve.K_v > largest)
    trace.note({
      about: "K_v",
      says: "So large a flow coefficient is past the bound for a valve of this bore: the factors for fittings hold no longer, and hardly any valve has it.",
      limit: { value: largest, kind: "flowCoefficient" },
    });
}
