import { acceptAbsolutePressure, acceptAirTemperature, acceptFlow } from "../fluids/accept-air.ts";
import { density } from "../fluids/density.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { viscosity } from "../fluids/viscosity.ts";
import { accept, refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { coefficientRatio } from "./coefficient-ratio.ts";
import { coreMeanDensity } from "./core-mean-density.ts";
import { coreMeanTemperature } from "./core-mean-temperature.ts";
import { noteLargeLoss } from "./large-loss-note.ts";
import { lossAtDensity } from "./loss-at-density.ts";
import { lossAtFlow } from "./loss-at-flow.ts";
import { measuredExponent } from "./measured-exponent.ts";
import { pressureAfterLoss } from "./pressure-after-loss.ts";
import { marginOfPressure, mostFlow, pressureLeft } from "./pressure-left.ts";
import { reynoldsRatio } from "./reynolds-ratio.ts";

/** A reading: kg/s, Pa lost, Pa absolute before, K before and after. */
type ReadingGiven<Which extends "I" | "II"> = {
  readonly [key in `${"m" | "Delta_p" | "p" | "T_in" | "T_out"}_${Which}`]?: SI | undefined;
};

/**
 * One reading and the exponent, or two readings; a reference density in kg/m³; and where the loss is wanted: kg/s, Pa
 * absolute before, K before and after. All of it dry air.
 */
export interface MeasuredLossGiven extends ReadingGiven<"I">, ReadingGiven<"II"> {
  readonly readings: "one" | "two";
  readonly n_p?: SI | undefined;
  readonly rho_ref?: SI | undefined;
  readonly m_a?: SI | undefined;
  readonly p_2?: SI | undefined;
  readonly T_2?: SI | undefined;
  readonly T_3?: SI | undefined;
}

/** Pa, kg/m³. `Delta_p_square` is the first reading by the square of the flow alone, as is often done. */
export interface MeasuredLoss {
  readonly Delta_p: SI;
  readonly Delta_p_square: SI;
  readonly p_3: SI;
  readonly n_p: SI;
  readonly rho_I: SI;
  readonly rho_mean: SI;
  readonly Delta_p_ref: SI;
}

/** Laminar flow has 1, flow with nothing but turns and edges 2; what lies past these by more than a fifth is no cooler's. */
const EXPONENT = { kind: "ratio", atLeast: 0.8, atMost: 2.2 } as const;
const LAMINAR = 1;
const ROUGH = 2;

/**
 * A measured loss at another flow, density and viscosity: loss times mean density goes with a power of the flow, and with what
 * that power leaves to 2 of the viscosity.
 *
 * The mean density at the wanted state holds the loss itself, so it is found by a bracketed root to 1e-13. Throws a
 * DomainError for what cannot be, for readings that give no exponent, and where the loss would take all the pressure, with
 * the flow from which on that is so.
 *
 * @example
 * measuredLoss({ readings: "one", m_I: 0.12, Delta_p_I: 1500, p_I: 102.8e3, T_in_I: 293.15, T_out_I: 293.15, n_p: 1.8,
 *   rho_ref: 1.2, m_a: 0.35, p_2: 260e3, T_2: 458.15, T_3: 331.93 }).Delta_p // 5755.8 Pa
 */
export const measuredLoss: Model<MeasuredLossGiven, MeasuredLoss> = (given, trace = plain) => {
  const rho_ref = accept("rho_ref", "The reference density", given.rho_ref ?? 1.2, {
    kind: "density",
    above: 0,
    atMost: 1000,
  });
  const m_a = acceptFlow("m_a", "The wanted air flow", given.m_a);
  const p_2 = acceptAbsolutePressure("p_2", "The pressure before the cooler, absolute,", given.p_2);
  const T_2 = acceptAirTemperature("T_2", "The temperature before the cooler", given.T_2);
  const T_3 = acceptAirTemperature("T_3", "The temperature after the cooler", given.T_3);

  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  const first = readingOf(given, "I", R_m, trace);
  const n_p =
    given.readings === "one"
      ? accept("n_p", "The exponent of the loss over the flow", given.n_p, EXPONENT)
      : exponentOf(first, readingOf(given, "II", R_m, trace), trace);

  const mu = meanViscosity(T_2, T_3, trace, "wanted state");
  const rho_in = trace.use(density, { p: p_2, R_m, T: T_2 }, "before the cooler");
  const at = (m: SI, p_out: SI, through: Trace) => {
    const Delta_p_ref = through.use(
      lossAtFlow,
      { Delta_p_ref: first.Delta_p, m, m_ref: first.m, n_p },
      "at the wanted flow, density and viscosity of the first reading",
    );
    const rho_out = through.use(density, { p: p_out, R_m, T: T_3 }, "behind the cooler");
    const rho_mean = through.use(coreMeanDensity, { rho_in, rho_out }, "wanted state");
    const Delta_p = through.use(
      lossAtDensity,
      { Delta_p_ref, rho_ref: first.rho, rho: rho_mean, mu, mu_ref: first.mu, n_p },
      "at the wanted flow, density and viscosity",
    );
    return { Delta_p, rho_mean };
  };
  const lossAt = (m: SI) => (p: SI) => at(m, p, plain).Delta_p;
  const settled = pressureLeft(p_2, lossAt(m_a));
  if (settled === undefined)
    throw new DomainError(
      "m_a",
      "At this air flow the loss would take all the pressure. It has to be below the bound.",
      { value: mostFlow((m) => marginOfPressure(p_2, lossAt(m)), m_a), kind: "massFlow" },
    );
  const { Delta_p, rho_mean } = at(m_a, settled, trace);
  const p_3 = trace.use(pressureAfterLoss, { p_in: p_2, Delta_p }, "cooler");
  const Delta_p_square = trace.use(
    lossAtFlow,
    { Delta_p_ref: first.Delta_p, m: m_a, m_ref: first.m, n_p: 2 },
    "the square of the flow alone, density and viscosity left out",
  );
  const Delta_p_ref = trace.use(
    lossAtDensity,
    { Delta_p_ref: first.Delta_p, rho_ref: first.rho, rho: rho_ref, mu: first.mu, mu_ref: first.mu, n_p },
    "first reading, at the reference density and its own viscosity",
  );
  noteLargeLoss(Delta_p, p_2, "Delta_p", trace);
  noteRealGas({ p: p_2, T: Math.min(T_2, T_3) }, "rho_mean", trace);
  return { Delta_p, Delta_p_square, p_3, n_p, rho_I: first.rho, rho_mean, Delta_p_ref };
};

interface Reading {
  readonly m: SI;
  readonly Delta_p: SI;
  readonly rho: SI;
  readonly mu: SI;
}

/** At the mean temperature of the air in the cooler. */
function meanViscosity(T_in: SI, T_out: SI, trace: Trace, where: string): SI {
  const T = trace.use(coreMeanTemperature, { T_in, T_out }, where);
  return trace.use(viscosity, { T }, `${where}, mean temperature`);
}

function readingOf(given: MeasuredLossGiven, which: "I" | "II", R_m: SI, trace: Trace): Reading {
  const name = which === "I" ? "first reading" : "second reading";
  const m = acceptFlow(`m_${which}`, `The air flow of the ${name}`, given[`m_${which}`]);
  const p = acceptAbsolutePressure(
    `p_${which}`,
    `The pressure before the cooler, ${name},`,
    given[`p_${which}`],
  );
  const Delta_p = accept(`Delta_p_${which}`, `The loss of the ${name}`, given[`Delta_p_${which}`], {
    kind: "pressureDifference",
    above: 0,
    below: p,
  });
  const T_in = acceptAirTemperature(
    `T_in_${which}`,
    `The temperature before the cooler, ${name},`,
    given[`T_in_${which}`],
  );
  const T_out = acceptAirTemperature(
    `T_out_${which}`,
    `The temperature after the cooler, ${name},`,
    given[`T_out_${which}`],
  );
  const p_out = trace.use(pressureAfterLoss, { p_in: p, Delta_p }, name);
  const rho_in = trace.use(density, { p, R_m, T: T_in }, `${name}, before the cooler`);
  const rho_out = trace.use(density, { p: p_out, R_m, T: T_out }, `${name}, behind the cooler`);
  const rho = trace.use(coreMeanDensity, { rho_in, rho_out }, name);
  return { m, Delta_p, rho, mu: meanViscosity(T_in, T_out, trace, name) };
}

/** The exponent that two readings say. */
function exponentOf(one: Reading, two: Reading, trace: Trace): SI {
  const where = "both readings";
  const flows = { m_I: one.m, m_II: two.m };
  const X_Re = trace.use(reynoldsRatio, { ...flows, mu_I: one.mu, mu_II: two.mu }, where);
  refuse(
    X_Re === 1,
    "m_II",
    "Both readings have the same Reynolds number, and say nothing of the exponent. Take the second at another flow.",
  );
  const losses = { Delta_p_I: one.Delta_p, Delta_p_II: two.Delta_p, rho_I: one.rho, rho_II: two.rho };
  const X_K = trace.use(coefficientRatio, { ...losses, ...flows }, where);
  const n_p = trace.use(measuredExponent, { X_K, X_Re }, where);
  const { kind, atLeast, atMost } = EXPONENT;
  const given = { value: n_p, kind };
  const check = "Check flows, losses and densities.";
  refuse(
    n_p < atLeast,
    "Delta_p_II",
    `These two readings give an exponent as low as the bound. No cooler has one so far below ${LAMINAR}, that of laminar flow. ${check}`,
    given,
  );
  refuse(
    n_p > atMost,
    "Delta_p_II",
    `These two readings give an exponent as high as the bound. No cooler has one so far above ${ROUGH}, that of flow with nothing but edges and turns. ${check}`,
    given,
  );
  if (n_p < LAMINAR || n_p > ROUGH)
    trace.note({
      about: "n_p",
      says: "The exponent that these two readings give lies outside 1 to 2, between laminar flow and flow with edges alone. One of them may be wrong.",
    });
  return n_p;
}
