import { density } from "../fluids/density.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { noteRealGas } from "../fluids/real-gas-note.ts";
import { accept, refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { coreMeanDensity } from "./core-mean-density.ts";
import { lossAtFlow } from "./loss-at-flow.ts";
import { measuredExponent } from "./measured-exponent.ts";
import { measuredLossAtDensity } from "./measured-loss-at-density.ts";
import { pressureAfterLoss } from "./pressure-after-loss.ts";
import { marginOfPressure, mostFlow, pressureLeft } from "./pressure-left.ts";

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

const FLOW = { kind: "massFlow", above: 0, atMost: 1000 } as const;
const PRESSURE = { kind: "pressure", above: 0, atMost: 5e6 } as const;
const TEMPERATURE = { kind: "temperature", atLeast: 173.15, atMost: 1000 } as const;

/** Laminar flow has 1, flow with nothing but turns and edges 2; what lies past these by more than a fifth is no cooler's. */
const EXPONENT = { kind: "ratio", atLeast: 0.8, atMost: 2.2 } as const;
const LAMINAR = 1;
const ROUGH = 2;

/**
 * A measured loss at another flow and density: loss times mean density goes with a power of the flow.
 *
 * The mean density at the wanted state holds the loss itself, so it is found by a bracketed root to 1e-13. Throws a
 * DomainError for what cannot be, for readings that give no exponent, and where the loss would take all the pressure, with
 * the flow from which on that is so.
 *
 * @example
 * measuredLoss({ readings: "one", m_I: 0.12, Delta_p_I: 1500, p_I: 102.8e3, T_in_I: 293.15, T_out_I: 293.15, n_p: 1.8,
 *   rho_ref: 1.2, m_a: 0.35, p_2: 260e3, T_2: 458.15, T_3: 331.93 }).Delta_p // 5497.7 Pa
 */
export const measuredLoss: Model<MeasuredLossGiven, MeasuredLoss> = (given, trace = plain) => {
  const rho_ref = accept("rho_ref", "The reference density", given.rho_ref ?? 1.2, {
    kind: "density",
    above: 0,
    atMost: 1000,
  });
  const m_a = accept("m_a", "The wanted air flow", given.m_a, FLOW);
  const p_2 = accept("p_2", "The pressure before the cooler, absolute,", given.p_2, PRESSURE);
  const T_2 = accept("T_2", "The temperature before the cooler", given.T_2, TEMPERATURE);
  const T_3 = accept("T_3", "The temperature after the cooler", given.T_3, TEMPERATURE);

  const R_m = trace.use(gasConstant, { w: 0 }, "dry air");
  const first = readingOf(given, "I", R_m, trace);
  const n_p =
    given.readings === "one"
      ? accept("n_p", "The exponent of the loss over the flow", given.n_p, EXPONENT)
      : exponentOf(first, readingOf(given, "II", R_m, trace), trace);

  const rho_in = trace.use(density, { p: p_2, R_m, T: T_2 }, "before the cooler");
  const at = (m: SI, p_out: SI, through: Trace) => {
    const Delta_p_ref = through.use(
      lossAtFlow,
      { Delta_p_ref: first.Delta_p, m, m_ref: first.m, n_p },
      "at the wanted flow, density of the first reading",
    );
    const rho_out = through.use(density, { p: p_out, R_m, T: T_3 }, "behind the cooler");
    const rho_mean = through.use(coreMeanDensity, { rho_in, rho_out }, "wanted state");
    const Delta_p = through.use(
      measuredLossAtDensity,
      { Delta_p_ref, rho_ref: first.rho, rho: rho_mean },
      "at the wanted flow and density",
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
    "the square of the flow alone, density left out",
  );
  const Delta_p_ref = trace.use(
    measuredLossAtDensity,
    { Delta_p_ref: first.Delta_p, rho_ref: first.rho, rho: rho_ref },
    "first reading, at the reference density",
  );
  noteRealGas({ p: p_2, T: Math.min(T_2, T_3) }, "rho_mean", trace);
  return { Delta_p, Delta_p_square, p_3, n_p, rho_I: first.rho, rho_mean, Delta_p_ref };
};

interface Reading {
  readonly m: SI;
  readonly Delta_p: SI;
  readonly rho: SI;
}

function readingOf(given: MeasuredLossGiven, which: "I" | "II", R_m: SI, trace: Trace): Reading {
  const name = which === "I" ? "first reading" : "second reading";
  const m = accept(`m_${which}`, `The air flow of the ${name}`, given[`m_${which}`], FLOW);
  const p = accept(`p_${which}`, `The pressure before the cooler, ${name},`, given[`p_${which}`], PRESSURE);
  const Delta_p = accept(`Delta_p_${which}`, `The loss of the ${name}`, given[`Delta_p_${which}`], {
    kind: "pressureDifference",
    above: 0,
    below: p,
  });
  const T_in = accept(
    `T_in_${which}`,
    `The temperature before the cooler, ${name},`,
    given[`T_in_${which}`],
    TEMPERATURE,
  );
  const T_out = accept(
    `T_out_${which}`,
    `The temperature after the cooler, ${name},`,
    given[`T_out_${which}`],
    TEMPERATURE,
  );
  const p_out = trace.use(pressureAfterLoss, { p_in: p, Delta_p }, name);
  const rho_in = trace.use(density, { p, R_m, T: T_in }, `${name}, before the cooler`);
  const rho_out = trace.use(density, { p: p_out, R_m, T: T_out }, `${name}, behind the cooler`);
  return { m, Delta_p, rho: trace.use(coreMeanDensity, { rho_in, rho_out }, name) };
}

/** The exponent that two readings say. */
function exponentOf(one: Reading, two: Reading, trace: Trace): SI {
  refuse(
    one.m === two.m,
    "m_II",
    "Both readings have the same flow, and say nothing of the exponent. Take the second at another flow.",
  );
  const n_p = trace.use(
    measuredExponent,
    {
      Delta_p_II: two.Delta_p,
      rho_II: two.rho,
      Delta_p_I: one.Delta_p,
      rho_I: one.rho,
      m_II: two.m,
      m_I: one.m,
    },
    "both readings",
  );
  const no = "No cooler has the exponent that these two readings give. Check flows, losses and densities.";
  const { kind, atLeast, atMost } = EXPONENT;
  refuse(n_p < atLeast, "Delta_p_II", `${no} The exponent has to be above the bound.`, {
    value: atLeast,
    kind,
  });
  refuse(n_p > atMost, "Delta_p_II", `${no} The exponent has to be below the bound.`, {
    value: atMost,
    kind,
  });
  if (n_p < LAMINAR || n_p > ROUGH)
    trace.note({
      about: "n_p",
      says: "The exponent that these two readings give lies outside 1 to 2, between laminar flow and flow with edges alone. One of them may be wrong.",
    });
  return n_p;
}
