import { constants } from "../constants.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { accept, refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { type Liquid, type LiquidGiven, liquidOf } from "./liquid.ts";
import {
  acceptCore,
  acceptPipe,
  type CoreGiven,
  lossesOfPipe,
  lossOfCore,
  type PipeGiven,
  type PipeLosses,
} from "./losses.ts";
import { hydraulicPower } from "./pump/hydraulic-power.ts";
import { leftForValve } from "./pump/left-for-valve.ts";
import { restLoss } from "./pump/rest-loss.ts";
import { type Source, type SourceGiven, sourceOf } from "./source.ts";
import { authority } from "./valve/authority.ts";
import { type Characteristic, type CharacteristicGiven, characteristicOf } from "./valve/characteristic.ts";
import { chokedDifference } from "./valve/choked-difference.ts";
import { criticalRatioFactor } from "./valve/critical-ratio-factor.ts";
import { effectiveCoefficient } from "./valve/effective-coefficient.ts";
import { noteAuthority } from "./valve/installed.ts";
import { valveFlow } from "./valve/valve-flow.ts";

/**
 * One way for water: a pump or a height, a pipe, a core, and behind all a valve that lets the water out. `p_out` is the
 * pressure right behind the valve, `p_v_hot` the vapour pressure of the water in it, where it is warmer there; Pa absolute.
 */
export type WaterCircuitGiven = SourceGiven &
  LiquidGiven &
  CharacteristicGiven & {
    readonly wanted: "flow" | "position";
    readonly pipe: PipeGiven;
    readonly core: CoreGiven;
    readonly K_vs?: SI | undefined;
    readonly F_L?: SI | undefined;
    readonly p_out?: SI | undefined;
    readonly x_v?: SI | undefined;
    readonly V_w?: SI | undefined;
    readonly p_v_hot?: SI | undefined;
  };

/**
 * m³/s, Pa, W, m/s. `N_v` is the authority of the valve, from its difference fully open and the losses then; `gain` the
 * change of the flow, as part of that fully open, over that of the position. `V_least` passes just before the valve closes;
 * below the position `x_choked` the valve is choked, where it is so at some positions and not at others.
 */
export interface WaterCircuit extends PipeLosses {
  readonly V_w: SI;
  readonly x_v: SI;
  readonly K_v: SI;
  readonly V_full: SI;
  readonly V_least: SI;
  readonly Delta_p_P: SI;
  readonly Delta_p_z: SI;
  readonly Delta_p_core: SI;
  readonly Delta_p_rest: SI;
  readonly Delta_p_v: SI;
  readonly Delta_p_ch: SI;
  readonly N_v: SI;
  readonly gain: SI;
  readonly W_w: SI;
  readonly isChoked: boolean;
  readonly x_choked: SI | undefined;
}

const ATMOSPHERE = constants.p_sl.value;
/** Half the step of the position over which a gain is taken. */
const STEP = 1e-4;
/** What the search of a flow may leave of one that was computed here before. */
const ROUNDING = 1e-9;

/**
 * Where pump and circuit meet, at a position of the valve or with the position that a flow needs. Choking is part of the
 * balance. Flows are sought to 1e-13 of the flow without a valve
 * or that of the valve at 1 bar.
 *
 * Throws a DomainError where pump and circuit have no point in common, and for a flow that the circuit does not pass. Notes
 * choking, a small authority, and a flow outside the points of the pump.
 *
 * @example
 * waterCircuit({ source: "pump", points: [[0, 30], [10 / 3600, 29], [20 / 3600, 26]], h_z: 2, liquid: "water", T_w: 298.15,
 *   pipe: { L: 25, d: 0.0525, k_s: 45e-6, K: 9 }, core: { Delta_p_ref: 18e3, V_ref: 12 / 3600, n_p: 2 }, K_vs: 25 / 3600,
 *   characteristic: "equal-percentage", R_0: 50, F_L: 0.9, wanted: "position", V_w: 9 / 3600 }).x_v // 0.6253
 */
export const waterCircuit: Model<WaterCircuitGiven, WaterCircuit> = (given, trace = plain) => {
  const circuit = circuitOf(given, trace);
  const { valve } = circuit;
  const V_full = flowThrough(circuit, valve.K_vs);
  refuse(
    !(V_full > 0),
    "p_v_hot",
    "So warm is the water in the valve that it boils before any of it comes through. Cooler water or more pressure is needed.",
  );
  const flowAt = (x: SI) => flowThrough(circuit, valve.K_vs * valve.characteristic.opening(x));

  let x_v: SI;
  let V_w: SI;
  if (given.wanted === "flow") {
    x_v = accept("x_v", "The position of the valve", given.x_v, { kind: "fraction", atLeast: 0, atMost: 1 });
    V_w = flowAt(x_v);
  } else {
    V_w = accept("V_w", "The wanted flow", given.V_w, { kind: "liquidFlow", atLeast: 1e-9, atMost: 10 });
    x_v = positionFor(circuit, V_w, V_full);
  }

  const at = balance(circuit, V_w, trace);
  const Delta_p_ch = chokedAt(circuit, at.Delta_p_v, trace);
  const isChoked = at.Delta_p_v >= Delta_p_ch;
  const K_v = V_w === 0 ? 0 : valve.K_vs * valve.characteristic.opening(x_v, trace);
  if (V_w > 0)
    trace.use(
      valveFlow,
      { F_P: 1, K_v, Delta_p: Math.min(at.Delta_p_v, Delta_p_ch), rho: circuit.liquid.rho },
      "valve",
    );
  const open = balance(circuit, V_full, plain);
  const N_v = trace.use(
    authority,
    { Delta_p_v: open.Delta_p_v, Delta_p_rest: open.Delta_p_rest },
    "valve, fully open",
  );
  const [from, to] = [Math.max(0, x_v - STEP), Math.min(1, x_v + STEP)];
  noteAuthority(N_v, trace);
  noteCircuit({ V_w, Delta_p_ch, isChoked }, circuit, trace);
  return {
    ...at,
    V_w,
    x_v,
    K_v,
    V_full,
    V_least: flowAt(0),
    Delta_p_ch,
    isChoked,
    x_choked: chokedUpTo(circuit, V_full),
    N_v,
    gain: (flowAt(to) - flowAt(from)) / ((to - from) * V_full),
    W_w: trace.use(hydraulicPower, { Delta_p: at.Delta_p_P, V_w }, "pump"),
  };
};

interface Circuit {
  readonly liquid: Liquid;
  readonly source: Source;
  /** The flow at which nothing is left for a valve. */
  readonly most: SI;
  readonly pipe: ReturnType<typeof acceptPipe>;
  readonly core: ReturnType<typeof acceptCore>;
  readonly valve: {
    readonly K_vs: SI;
    readonly F_L: SI;
    readonly p_out: SI;
    readonly p_v: SI;
    readonly F_F: SI;
    readonly characteristic: Characteristic;
  };
}

function circuitOf(given: WaterCircuitGiven, trace: Trace): Circuit {
  const p_out = accept("p_out", "The pressure behind the valve, absolute,", given.p_out ?? ATMOSPHERE, {
    kind: "pressure",
    atLeast: 1,
    atMost: 1e7,
  });
  const liquid = liquidOf(given, p_out, "p_out", trace);
  const K_vs = accept("K_vs", "The flow coefficient of the valve, fully open,", given.K_vs, {
    kind: "flowCoefficient",
    atLeast: 1e-9,
    atMost: 30,
  });
  const F_L = accept("F_L", "The pressure recovery factor of the valve", given.F_L ?? 0.9, {
    kind: "ratio",
    atLeast: 0.2,
    atMost: 1,
  });
  const p_v = accept("p_v_hot", "The vapour pressure in the valve", given.p_v_hot ?? liquid.p_v, {
    kind: "pressure",
    atLeast: 0,
    atMost: 1e7,
  });
  const pipe = acceptPipe(given.pipe);
  const core = acceptCore(given.core);
  const source = sourceOf(given, liquid, trace);
  const F_F = trace.use(criticalRatioFactor, { p_v, p_crit: liquid.p_crit }, "water in the valve");
  const valve = { K_vs, F_L, p_out, p_v, F_F, characteristic: characteristicOf(given) };
  const rest = { liquid, source, pipe, core, valve };
  return { ...rest, most: mostFlow((V) => balance({ ...rest, most: 0 }, V, plain).Delta_p_v, source) };
}

/**
 * The flow at which `left` comes to nothing, or the most of the source where all but nothing holds the water back. Throws a
 * DomainError where a pump would be past its end.
 */
export function mostFlow(left: (V_w: SI) => SI, { most, span }: Source): SI {
  let above = Math.min(1e-12, most);
  while (above < most && left(above) > 0) above = Math.min(2 * above, most);
  if (left(above) > 0 && !span) return above;
  if (left(above) > 0)
    throw new DomainError(
      "h_z",
      "The water falls so far that the circuit takes it beyond the end of the pump's curve: pump and circuit have no point in common.",
    );
  // To the last bit: through a hair of a pipe the flow is far below where the search began.
  return bracketedRoot(left, 0, above, { tolerance: 0, limit: 300 });
}

function balance({ liquid, source, pipe, core }: Circuit, V_w: SI, trace: Trace) {
  const losses = lossesOfPipe(pipe, V_w, liquid, trace);
  const { Delta_p_wall, Delta_p_other } = losses;
  const Delta_p_core = lossOfCore(core, V_w, liquid, trace);
  const Delta_p_rest = trace.use(restLoss, { Delta_p_wall, Delta_p_other, Delta_p_core }, "circuit");
  const Delta_p_P = source.given(V_w, trace);
  const { Delta_p_z } = source;
  const Delta_p_v = trace.use(leftForValve, { Delta_p_P, Delta_p_z, Delta_p_rest }, "circuit");
  return { ...losses, Delta_p_core, Delta_p_rest, Delta_p_P, Delta_p_z, Delta_p_v };
}

/** Never below zero: water that boils before the valve passes none. */
function chokedAt({ valve }: Circuit, Delta_p_v: SI, trace: Trace): SI {
  const { F_L, F_F, p_v, p_out } = valve;
  const difference = { F_LP: F_L, F_P: 1, p_in: p_out + Delta_p_v, F_F, p_v };
  return Math.max(0, trace.use(chokedDifference, difference, "valve"));
}

/** The flow with a valve of this coefficient: what it would pass falls as the flow takes its pressure away. */
function flowThrough(circuit: Circuit, K_v: SI): SI {
  if (K_v === 0) return 0;
  const { rho } = circuit.liquid;
  const excess = (V_w: SI) => {
    const Delta_p_v = Math.max(0, balance(circuit, V_w, plain).Delta_p_v);
    const Delta_p = Math.min(Delta_p_v, chokedAt(circuit, Delta_p_v, plain));
    return valveFlow.compute({ F_P: 1, K_v, Delta_p, rho }) - V_w;
  };
  return bracketedRoot(excess, 0, circuit.most * (1 + ROUNDING), {
    tolerance: 1e-13 * Math.min(circuit.most, K_v),
  });
}

/** The position at which a valve that chokes further closed comes free, if there is one. */
function chokedUpTo(circuit: Circuit, V_full: SI): SI | undefined {
  const excess = (V_w: SI) => {
    const { Delta_p_v } = balance(circuit, V_w, plain);
    return Delta_p_v - chokedAt(circuit, Delta_p_v, plain);
  };
  if (excess(0) <= 0 || excess(V_full) >= 0) return undefined;
  const V_w = bracketedRoot(excess, 0, V_full, { tolerance: 1e-12 * V_full });
  const { valve, liquid } = circuit;
  const { Delta_p_v } = balance(circuit, V_w, plain);
  const phi_v = effectiveCoefficient.compute({ V_w, Delta_p: Delta_p_v, rho: liquid.rho }) / valve.K_vs;
  const { least, position } = valve.characteristic;
  return phi_v > least && phi_v < 1 ? position(phi_v) : undefined;
}

function positionFor(circuit: Circuit, V_w: SI, V_full: SI): SI {
  const { valve, liquid, most } = circuit;
  const bound = (value: SI) => ({ value, kind: "liquidFlow" }) as const;
  refuse(
    V_w >= most,
    "V_w",
    "Even without a valve the circuit passes only the bound. Less flow, a larger pump or wider pipes are needed.",
    bound(most),
  );
  refuse(
    V_w > V_full * (1 + ROUNDING),
    "V_w",
    "With the valve fully open the circuit passes only the bound. Less flow or a larger valve is needed.",
    bound(V_full),
  );
  const { Delta_p_v } = balance(circuit, V_w, plain);
  const Delta_p = Math.min(Delta_p_v, chokedAt(circuit, Delta_p_v, plain));
  const K_v = effectiveCoefficient.compute({ V_w, Delta_p, rho: liquid.rho });
  const phi_v = K_v / valve.K_vs;
  const { least } = valve.characteristic;
  refuse(
    phi_v < least * (1 - ROUNDING),
    "V_w",
    "Just before it closes the valve still passes the bound. More flow or a smaller valve is needed.",
    bound(phi_v < least ? flowThrough(circuit, least * valve.K_vs) : V_w),
  );
  return valve.characteristic.position(Math.min(1, Math.max(least, phi_v)));
}

function noteCircuit(
  { V_w, Delta_p_ch, isChoked }: { V_w: SI; Delta_p_ch: SI; isChoked: boolean },
  { source, valve }: Circuit,
  trace: Trace,
): void {
  if (valve.p_v > valve.p_out)
    trace.note({
      about: "p_out",
      says: "Behind the valve the pressure is below the vapour pressure of the water there, the bound: part of the water stays steam. It flashes, and scalds and wears what it meets.",
      limit: { value: valve.p_v, kind: "pressure" },
    });
  if (isChoked)
    trace.note({
      about: "Delta_p_v",
      says: "The valve is choked: the water boils in its jet, and from the bound on a larger difference brings no more flow. A valve with a higher recovery factor, cooler water, or two drops in line help.",
      limit: { value: Delta_p_ch, kind: "pressureDifference" },
    });
  const { span } = source;
  if (!span || (V_w >= span[0] && V_w <= span[1])) return;
  trace.note({
    about: "V_w",
    says: "This flow is past the last point of the pump, the bound, and its curve is only carried on.",
    limit: { value: V_w < span[0] ? span[0] : span[1], kind: "liquidFlow" },
  });
}
