import { boreArea } from "../../flow/bore-area.ts";
import { diameterRatio } from "../../flow/diameter-ratio.ts";
import { ductSpeed } from "../../flow/duct-speed.ts";
import { fittingLoss } from "../../flow/fitting-loss.ts";
import { reynoldsNumber } from "../../flow/reynolds-number.ts";
import { bracketedRoot } from "../../numerics/bracketed-root.ts";
import { accept, refuse } from "../../quantity/accept.ts";
import { DomainError, type SI } from "../../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../../relation/trace.ts";
import { criticalPressureRatio } from "./critical-pressure-ratio.ts";
import { dischargeCoefficient } from "./discharge-coefficient.ts";
import { downstreamTap } from "./downstream-tap.ts";
import { expansibility } from "./expansibility.ts";
import { flangeTap } from "./flange-tap.ts";
import { orificeFlow } from "./orifice-flow.ts";
import { noteOrificeRange } from "./orifice-range.ts";
import { plateLoss } from "./plate-loss.ts";
import { smallPipeTerm } from "./small-pipe-term.ts";
import { velocityTerm } from "./velocity-term.ts";

export type Taps = "corner" | "flange" | "radius";

/**
 * A plate with a sharp-edged hole of bore `d` in a pipe of bore `d_l`, m; taps in the corners, in the flanges, or at one bore
 * before and half a bore behind it. The fluid before it: kg/m³, Pa s, and for a gas Pa absolute and its heat-capacity ratio. A liquid
 * whose pressures are known, Pa absolute, has its vapour pressure `p_v` too, and may not boil in the hole.
 * Of flow in kg/s, difference in Pa and bore the one that is wanted is left out.
 */
export interface OrificePlateGiven {
  readonly wanted: "flow" | "difference" | "bore";
  readonly fluid: "gas" | "liquid";
  readonly taps: Taps;
  readonly d_l?: SI | undefined;
  readonly d?: SI | undefined;
  readonly m?: SI | undefined;
  readonly Delta_p?: SI | undefined;
  readonly rho?: SI | undefined;
  readonly mu?: SI | undefined;
  readonly p_in?: SI | undefined;
  readonly kappa?: SI | undefined;
  readonly p_v?: SI | undefined;
}

/** kg/s, Pa, m. `Delta_p_lost` is what is lost for good; the rest of the difference comes back behind the plate. */
export interface OrificePlate {
  readonly m: SI;
  readonly Delta_p: SI;
  readonly d: SI;
  readonly beta_d: SI;
  readonly Re: SI;
  readonly C_D: SI;
  readonly epsilon_e: SI;
  readonly K: SI;
  readonly Delta_p_lost: SI;
}

const LARGEST_DIFFERENCE = 1e7;
/** Below this Reynolds number, a tenth of the standard's own limit, the formula for the coefficient is mere numbers. */
const LEAST_REYNOLDS = 500;
/** Bore ratios that are sought; the standard ends before, and a note says so. */
const NARROWEST = 0.02;
const WIDEST = 0.95;

/**
 * An orifice plate by ISO 5167-2:2003: the flow that a difference means, the difference that a flow makes, or the bore that
 * makes a wanted difference. The discharge coefficient holds the flow itself, so it is repeated or sought to 1e-12.
 *
 * Throws a DomainError for what cannot be: no such bore, or a gas that would come to the speed of sound in the hole. Notes
 * what leaves the limits of the standard.
 *
 * @example
 * orificePlate({ wanted: "flow", fluid: "gas", taps: "radius", d_l: 0.0945, d: 0.0339, p_in: 137.7e3, rho: 4.433,
 *   mu: 1.82e-5, kappa: 1.4, Delta_p: 4710 }).m // 0.11075 kg/s
 */
export const orificePlate: Model<OrificePlateGiven, OrificePlate> = (given, trace = plain) => {
  const plate = plateOf(given);
  const d = given.wanted === "bore" ? boreFor(given, plate) : acceptBore(given.d, plate.d_l);
  const beta_d = trace.use(diameterRatio, { d, d_l: plate.d_l }, "plate");
  const Delta_p =
    given.wanted === "difference" ? differenceFor(given, plate, d) : acceptDifference(given, plate);
  const m = settle(plate, d, Delta_p);
  const { Re, C_D, epsilon_e } = coefficients(plate, { d, m, Delta_p }, trace);
  const flow = trace.use(
    orificeFlow,
    { C_D, epsilon: epsilon_e, d, rho: plate.rho, Delta_p, beta_d },
    "plate",
  );
  const K = trace.use(plateLoss, { beta_d, C_D }, "plate");
  const c = speed(plate, m, trace);
  const Delta_p_lost = trace.use(fittingLoss, { K, rho: plate.rho, c }, "plate");
  noteOrificeRange({ ...plate, d, beta_d, Re, Delta_p, taps: given.taps }, trace);
  return { m: flow, Delta_p, d, beta_d, Re, C_D, epsilon_e, K, Delta_p_lost };
};

interface Plate {
  readonly d_l: SI;
  readonly rho: SI;
  readonly mu: SI;
  readonly taps: Taps;
  readonly gas: { readonly p_in: SI; readonly kappa: SI } | undefined;
  readonly most: SI;
}

function plateOf(given: OrificePlateGiven): Plate {
  const d_l = accept("d_l", "The bore of the pipe", given.d_l, { kind: "length", atLeast: 1e-4, atMost: 5 });
  const rho = accept("rho", "The density before the plate", given.rho, {
    kind: "density",
    atLeast: 1e-3,
    atMost: 3000,
  });
  const mu = accept("mu", "The viscosity", given.mu, { kind: "viscosity", atLeast: 1e-7, atMost: 1 });
  if (given.fluid === "liquid")
    return { d_l, rho, mu, taps: given.taps, gas: undefined, most: mostOfLiquid(given) };
  const p_in = accept("p_in", "The pressure before the plate, absolute,", given.p_in, {
    kind: "pressure",
    atLeast: 1,
    atMost: 1e7,
  });
  const kappa = accept("kappa", "The heat-capacity ratio", given.kappa, {
    kind: "ratio",
    above: 1,
    atMost: 1.7,
  });
  const most = p_in * (1 - criticalPressureRatio.compute({ kappa }));
  return { d_l, rho, mu, taps: given.taps, gas: { p_in, kappa }, most };
}

/** The difference at which a liquid boils in the hole, where that is known. */
function mostOfLiquid({ p_in, p_v }: OrificePlateGiven): SI {
  if (p_in === undefined || p_v === undefined) return LARGEST_DIFFERENCE;
  refuse(
    p_in <= p_v,
    "p_in",
    "At this pressure the liquid boils before it comes to the plate. The pressure has to be above the bound.",
    { value: p_v, kind: "pressure" },
  );
  return Math.min(LARGEST_DIFFERENCE, p_in - p_v);
}

const acceptBore = (d: SI | undefined, d_l: SI): SI =>
  accept("d", "The bore of the plate", d, {
    kind: "length",
    atLeast: NARROWEST * d_l,
    atMost: WIDEST * d_l,
  });

/** The flow at the least Reynolds number. */
const leastFlow = ({ d_l, mu }: Plate): SI => (LEAST_REYNOLDS * Math.PI * d_l * mu) / 4;

function acceptFlow(m: SI | undefined, plate: Plate): SI {
  const flow = accept("m", "The flow", m, { kind: "massFlow", above: 0, atMost: 10_000 });
  refuse(
    flow < leastFlow(plate),
    "m",
    "So little flow in this pipe is far below what the coefficient of a plate was measured for. It may be as low as the bound.",
    { value: leastFlow(plate), kind: "massFlow" },
  );
  return flow;
}

function acceptDifference({ Delta_p: given }: OrificePlateGiven, { gas, most }: Plate): SI {
  const Delta_p = accept("Delta_p", "The difference between the taps", given, {
    kind: "pressureDifference",
    atLeast: 1e-3,
    ...(most === LARGEST_DIFFERENCE ? { atMost: most } : {}),
  });
  refuse(
    most !== LARGEST_DIFFERENCE && Delta_p >= most,
    "Delta_p",
    gas
      ? "With such a difference the gas would come to the speed of sound in the hole. The difference has to be below the bound."
      : "With such a difference the liquid would boil in the hole. The difference has to be below the bound.",
    { value: most, kind: "pressureDifference" },
  );
  return Delta_p;
}

function speed({ d_l, rho }: Plate, m: SI, trace: Trace): SI {
  const A = trace.use(boreArea, { d: d_l }, "pipe");
  return trace.use(ductSpeed, { m_a: m, rho, A }, "pipe");
}

interface At {
  readonly d: SI;
  readonly m: SI;
  readonly Delta_p: SI;
}

function coefficients(plate: Plate, { d, m, Delta_p }: At, trace: Trace) {
  const { d_l, rho, mu, taps, gas } = plate;
  const beta_d = d / d_l;
  const Re = trace.use(reynoldsNumber, { rho, c: speed(plate, m, trace), d: d_l, mu }, "pipe");
  const { L_1, L_2 } = tapsAt(taps, d_l, trace);
  const M_2 = trace.use(downstreamTap, { L_2, beta_d }, "plate");
  const A_Re = trace.use(velocityTerm, { beta_d, Re }, "plate");
  const Delta_C_D = trace.use(smallPipeTerm, { beta_d, d_l }, "plate");
  const C_D = trace.use(dischargeCoefficient, { beta_d, Re, L_1, M_2, A_Re, Delta_C_D }, "plate");
  const epsilon_e = gas
    ? trace.use(
        expansibility,
        { beta_d, p_in: gas.p_in, p_out: gas.p_in - Delta_p, kappa: gas.kappa },
        "plate",
      )
    : 1;
  return { Re, C_D, epsilon_e };
}

function tapsAt(taps: Taps, d_l: SI, trace: Trace): { L_1: SI; L_2: SI } {
  if (taps === "corner") return { L_1: 0, L_2: 0 };
  if (taps === "radius") return { L_1: 1, L_2: 0.47 };
  const L = trace.use(flangeTap, { d_l }, "plate");
  return { L_1: L, L_2: L };
}

/** The flow that a difference means: the discharge coefficient hardly moves with it, so a few rounds settle it. */
function settle(plate: Plate, d: SI, Delta_p: SI): SI {
  const beta_d = d / plate.d_l;
  const flowWith = (C_D: SI, epsilon: SI) =>
    orificeFlow.compute({ C_D, epsilon, d, rho: plate.rho, Delta_p, beta_d });
  let m = flowWith(0.6, 1);
  for (let round = 0; round < 200; round++) {
    const { C_D, epsilon_e } = coefficients(plate, { d, m, Delta_p }, plain);
    const next = flowWith(C_D, epsilon_e);
    if (Math.abs(next - m) <= 1e-14 * next && next >= leastFlow(plate)) return next;
    m = next;
  }
  throw new DomainError(
    "Delta_p",
    "So little flow is far outside what an orifice plate can measure: its coefficient has no value here. A larger difference is needed.",
  );
}

function differenceFor(given: OrificePlateGiven, plate: Plate, d: SI): SI {
  const m = acceptFlow(given.m, plate);
  const beta_d = d / plate.d_l;
  const short = (Delta_p: SI) => {
    const { C_D, epsilon_e } = coefficients(plate, { d, m, Delta_p }, plain);
    return orificeFlow.compute({ C_D, epsilon: epsilon_e, d, rho: plate.rho, Delta_p, beta_d }) - m;
  };
  refuse(
    !(short(plate.most) > 0),
    "m",
    plate.gas
      ? "So large a flow would come to the speed of sound in the hole. It has to be below the bound, or the bore larger."
      : "So large a flow would need more pressure than there is, or would boil in the hole. It has to be below the bound, or the bore larger.",
    { value: m + short(plate.most), kind: "massFlow" },
  );
  // In the square root of the difference the flow is nearly a straight line.
  const root = bracketedRoot((y) => short(y * y), 1e-9, Math.sqrt(plate.most), { tolerance: 1e-13 });
  return root * root;
}

function boreFor(given: OrificePlateGiven, plate: Plate): SI {
  const m = acceptFlow(given.m, plate);
  const Delta_p = acceptDifference(given, plate);
  const { d_l } = plate;
  const short = (d: SI) => settleAt(plate, d, Delta_p, m) - m;
  refuse(
    short(NARROWEST * d_l) > 0,
    "m",
    "For so small a flow in this pipe the hole would be too small to be drilled. The flow may be as low as the bound.",
    { value: m + short(NARROWEST * d_l), kind: "massFlow" },
  );
  refuse(
    short(WIDEST * d_l) < 0,
    "m",
    "So large a flow makes more than this difference even with hardly a plate at all. The flow may be as high as the bound.",
    { value: m + short(WIDEST * d_l), kind: "massFlow" },
  );
  return bracketedRoot(short, NARROWEST * d_l, WIDEST * d_l, { tolerance: 1e-15 });
}

/** What the plate would pass with the coefficients at the wanted flow: at the right bore this is that flow. */
function settleAt(plate: Plate, d: SI, Delta_p: SI, m: SI): SI {
  const { C_D, epsilon_e } = coefficients(plate, { d, m, Delta_p }, plain);
  return orificeFlow.compute({ C_D, epsilon: epsilon_e, d, rho: plate.rho, Delta_p, beta_d: d / plate.d_l });
}
