import { maskingLossFactor } from "../flow/masking-loss-factor.ts";
import { maskingSpeed } from "../flow/masking-speed.ts";
import { acceptAirTemperature } from "../fluids/accept-air.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import type { Arrangement } from "./arrangement.ts";
import { arrangementOf } from "./arrangements.ts";
import { COOLANT_TEMPERATURE } from "./cooler.ts";
import { coolerOutletTemperature } from "./cooler-outlet-temperature.ts";
import { temperatureChange } from "./temperature-change.ts";
import { unevenCapacityRatio } from "./uneven-capacity-ratio.ts";
import { unevenHalves } from "./uneven-halves.ts";
import { unevenLastHalf } from "./uneven-last-half.ts";
import { unevenLastThird } from "./uneven-last-third.ts";
import { unevenLossHalves } from "./uneven-loss-halves.ts";
import { unevenLossThirds } from "./uneven-loss-thirds.ts";
import { unevenThirds } from "./uneven-thirds.ts";
import { unevenTransferUnits } from "./uneven-transfer-units.ts";

/**
 * A cooler by its arrangement's id, its transfer units and ratio on the air with a clean face and even air, and both inlet
 * temperatures in K. `s_a` is the share of the air side in the resistance to heat, `n_h` the exponent of the conductance of
 * that side over the flow, `n_p` that of the loss. Then what is wrong: a blocked share of the face, or the flow through the
 * first of two halves, or of the first two of three thirds, over its even share.
 */
export interface UnevenFlowGiven {
  readonly arrangement: string;
  readonly NTU?: SI | undefined;
  readonly R?: SI | undefined;
  readonly T_2?: SI | undefined;
  readonly T_w_in?: SI | undefined;
  readonly s_a?: SI | undefined;
  readonly n_h?: SI | undefined;
  readonly n_p?: SI | undefined;
  readonly wrong: "masked" | "halves" | "thirds";
  readonly x_b?: SI | undefined;
  readonly omega_1?: SI | undefined;
  readonly omega_2?: SI | undefined;
}

/** K, and ratios. `Phi` is the loss over that with a clean, even face. */
export interface UnevenFlow {
  readonly P: SI;
  readonly P_u: SI;
  readonly T_3: SI;
  readonly T_3_u: SI;
  readonly Delta_T: SI;
  readonly Phi: SI;
}

const LEAST_FLOW = 0.05;
const EXPONENT = { kind: "ratio", atLeast: 0, atMost: 1 } as const;

/**
 * What a masked or unevenly fed face makes of a cooler: effectiveness, outlet temperature and loss, beside those of the
 * clean and even one.
 *
 * Each part of the face is a cooler of its own, with its even share of the water; behind them the air mixes. A blocked
 * share takes area away and drives the air faster through the rest, which keeps all the water. Throws a DomainError for what
 * cannot be.
 *
 * @example
 * unevenFlow({ arrangement: "counter-cross-2", NTU: 1.58, R: 0.094, T_2: 458.15, T_w_in: 295.15, s_a: 1, n_h: 0.25,
 *   n_p: 1.8, wrong: "halves", omega_1: 1.2 }).P_u // 0.7680
 */
export const unevenFlow: Model<UnevenFlowGiven, UnevenFlow> = (given, trace = plain) => {
  const cooler = acceptFacedCooler(given);
  const { arrangement, NTU, R, T_2, T_w_in } = cooler;
  if (T_w_in > T_2)
    trace.note({ about: "T_w_in", says: "The water is hotter than the air, so it heats the air." });
  const P = trace.use(arrangement.effectiveness, { NTU, R }, `${arrangement.name}, clean and even`);
  const { P_u, Phi } = faults[given.wrong](given, cooler, trace);
  const outlet = (P: SI, where: string) =>
    trace.use(coolerOutletTemperature, { T_in: T_2, P, T_w_in }, where);
  const T_3 = outlet(P, "clean and even");
  const T_3_u = outlet(P_u, "as it is");
  const Delta_T = trace.use(
    temperatureChange,
    { T_in: T_3_u, T_out: T_3 },
    "air behind the cooler, both ways",
  );
  return { P, P_u, T_3, T_3_u, Delta_T, Phi };
};

interface FacedCooler {
  readonly arrangement: Arrangement;
  readonly NTU: SI;
  readonly R: SI;
  readonly T_2: SI;
  readonly T_w_in: SI;
  readonly s_a: SI;
  readonly n_h: SI;
  readonly n_p: SI;
}

const acceptFacedCooler = (given: UnevenFlowGiven): FacedCooler => ({
  arrangement: arrangementOf(given.arrangement),
  NTU: accept("NTU", "The number of transfer units", given.NTU, { kind: "ratio", above: 0, atMost: 50 }),
  R: accept("R", "The ratio of the heat-capacity rates", given.R, { kind: "ratio", atLeast: 0, atMost: 20 }),
  T_2: acceptAirTemperature("T_2", "The air temperature before the cooler", given.T_2),
  T_w_in: accept("T_w_in", "The water temperature at the inlet", given.T_w_in, COOLANT_TEMPERATURE),
  s_a: accept("s_a", "The share of the air side in the resistance", given.s_a, {
    kind: "fraction",
    atLeast: 0,
    atMost: 1,
  }),
  n_h: accept("n_h", "The exponent of the conductance over the flow", given.n_h, EXPONENT),
  n_p: accept("n_p", "The exponent of the loss over the flow", given.n_p, {
    kind: "ratio",
    atLeast: 0.8,
    atMost: 2.2,
  }),
});

interface Faulty {
  readonly P_u: SI;
  readonly Phi: SI;
}

const faults = { masked, halves, thirds } satisfies Record<UnevenFlowGiven["wrong"], unknown>;

function masked(given: UnevenFlowGiven, cooler: FacedCooler, trace: Trace): Faulty {
  const x_b = accept("x_b", "The share of the face that is blocked", given.x_b, {
    kind: "fraction",
    atLeast: 0,
    atMost: 0.9,
  });
  const { arrangement, R, n_p } = cooler;
  const omega = trace.use(maskingSpeed, { x_b }, "open passages");
  const NTU = unitsOf(cooler, omega, trace, "open passages");
  const P_u = trace.use(arrangement.effectiveness, { NTU, R }, `${arrangement.name}, masked`);
  return { P_u, Phi: trace.use(maskingLossFactor, { omega, n_p }, "core") };
}

function halves(given: UnevenFlowGiven, cooler: FacedCooler, trace: Trace): Faulty {
  const omega_1 = acceptFlow("omega_1", "The flow through the first half", given.omega_1, 2);
  const omega_2 = trace.use(unevenLastHalf, { omega_1 }, "second half");
  const P_1 = effectivenessOf(cooler, omega_1, trace, "first half");
  const P_2 = effectivenessOf(cooler, omega_2, trace, "second half");
  const P_u = trace.use(unevenHalves, { omega_1, P_1, omega_2, P_2 }, "mixed behind the cooler");
  return { P_u, Phi: trace.use(unevenLossHalves, { omega_1, omega_2, n_p: cooler.n_p }, "core") };
}

function thirds(given: UnevenFlowGiven, cooler: FacedCooler, trace: Trace): Faulty {
  const omega_1 = acceptFlow("omega_1", "The flow through the first third", given.omega_1, 3 - LEAST_FLOW);
  const omega_2 = acceptFlow("omega_2", "The flow through the second third", given.omega_2, 3 - omega_1);
  const omega_3 = trace.use(unevenLastThird, { omega_1, omega_2 }, "last third");
  const P_1 = effectivenessOf(cooler, omega_1, trace, "first third");
  const P_2 = effectivenessOf(cooler, omega_2, trace, "second third");
  const P_3 = effectivenessOf(cooler, omega_3, trace, "last third");
  const P_u = trace.use(
    unevenThirds,
    { omega_1, P_1, omega_2, P_2, omega_3, P_3 },
    "mixed behind the cooler",
  );
  return { P_u, Phi: trace.use(unevenLossThirds, { omega_1, omega_2, omega_3, n_p: cooler.n_p }, "core") };
}

/** A part's flow over its even share, which leaves some of the `left` for the last part. */
const acceptFlow = (field: string, what: string, omega: SI | undefined, left: SI): SI =>
  accept(field, `${what} over its even share`, omega, {
    kind: "ratio",
    atLeast: LEAST_FLOW,
    atMost: left - LEAST_FLOW,
  });

function unitsOf({ NTU, s_a, n_h }: FacedCooler, omega: SI, trace: Trace, where: string): SI {
  return trace.use(unevenTransferUnits, { NTU, omega, s_a, n_h }, where);
}

/** Of a part of the face with its own share of the water. */
function effectivenessOf(cooler: FacedCooler, omega: SI, trace: Trace, where: string): SI {
  const { arrangement, R } = cooler;
  const NTU = unitsOf(cooler, omega, trace, where);
  const R_i = trace.use(unevenCapacityRatio, { R, omega }, where);
  return trace.use(arrangement.effectiveness, { NTU, R: R_i }, `${arrangement.name}, ${where}`);
}
