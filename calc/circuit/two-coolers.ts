import { constants } from "../constants.ts";
import { bracketedRoot } from "../numerics/bracketed-root.ts";
import { accept, refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { type Model, plain, type Trace } from "../relation/trace.ts";
import { type Liquid, type LiquidGiven, liquidOf } from "./liquid.ts";
import {
  acceptCore,
  acceptPipe,
  type Core,
  type CoreGiven,
  lossesOfPipe,
  lossOfCore,
  type Pipe,
  type PipeGiven,
} from "./losses.ts";
import { restLoss } from "./pump/rest-loss.ts";
import { type Source, type SourceGiven, sourceOf } from "./source.ts";
import { chokedDifference } from "./valve/choked-difference.ts";
import { criticalRatioFactor } from "./valve/critical-ratio-factor.ts";
import { effectiveCoefficient } from "./valve/effective-coefficient.ts";
import { valveDifference } from "./valve/valve-difference.ts";
import { mostFlow } from "./water-circuit.ts";

/**
 * A cooler with its own pipe and, behind both, its valve: its flow coefficient where it stands, m³/s, or the flow that it shall
 * get; and its recovery factor, 0.9 unless given.
 */
export interface CoolerBranchGiven {
  readonly core: CoreGiven;
  readonly pipe?: PipeGiven | undefined;
  readonly K_v?: SI | undefined;
  readonly V_w?: SI | undefined;
  readonly F_L?: SI | undefined;
}

/**
 * Two coolers on one pump or one head, side by side or one behind the other, with the pipe that both share. `p_out` is the
 * pressure behind the last valve, Pa absolute.
 */
export type TwoCoolersGiven = SourceGiven &
  LiquidGiven & {
    readonly layout: "parallel" | "series";
    readonly wanted: "flows" | "settings";
    readonly shared: PipeGiven;
    readonly one: CoolerBranchGiven;
    readonly two: CoolerBranchGiven;
    readonly p_out?: SI | undefined;
  };

/** m³/s, Pa: the flow of a branch, and where its pressure goes. */
export interface CoolerBranch {
  readonly V_w: SI;
  readonly K_v: SI;
  readonly Delta_p_rest: SI;
  readonly Delta_p_v: SI;
}

/**
 * `moves[i][j]` is by how much of itself the flow of cooler i changes, for a small change of the flow coefficient of valve
 * j, as part of itself. `first` is the valve to set first; `left` the part of the miss that one more round of both leaves,
 * 1 where both are one flow.
 */
export interface TwoCoolers {
  readonly one: CoolerBranch;
  readonly two: CoolerBranch;
  readonly V_w: SI;
  readonly Delta_p_P: SI;
  readonly Delta_p_z: SI;
  readonly Delta_p_shared: SI;
  /** What is left of the pressure for the coolers and their valves. */
  readonly Delta_p_branches: SI;
  readonly moves: readonly [readonly [SI, SI], readonly [SI, SI]];
  readonly first: "one" | "two" | "either";
  readonly left: SI;
  /** For wanted flows: how much each cooler can have beside that of the other, before nothing is left for a valve. */
  readonly V_most: readonly [SI, SI] | undefined;
}

const ATMOSPHERE = constants.p_sl.value;
/** Change of a flow coefficient, as part of it, by which the moves are taken: to about a millionth. */
const NUDGE = 1e-3;
/** Water that is slower than this, m³/s, stands still to any meter. */
const STANDS_STILL = 1e-12;
/** Below this difference of two moves it does not matter which valve is set first. */
const ALIKE = 1e-6;

/**
 * Flows of two coolers that share a pump, by mass and pressure; or the valves that give each its flow. Side by side, both
 * have the same pressure across them; one behind the other, the same flow.
 *
 * The flows are those of valves that do not choke, and a note says where one does: its flow is then less. Throws a DomainError where pump and circuit have
 * no point in common, for flows that leave nothing for a valve, and for settings of two valves that stand in one line.
 *
 * @example
 * twoCoolers({ layout: "parallel", wanted: "flows", source: "head", h_w: 20, liquid: "water", T_w: 298.15,
 *   shared: { L: 10, d: 0.0525, k_s: 45e-6, K: 4 }, one: { K_v: 6 / 3600, core: { Delta_p_ref: 18e3, V_ref: 12 / 3600, n_p: 2 } },
 *   two: { K_v: 3 / 3600, core: { Delta_p_ref: 18e3, V_ref: 12 / 3600, n_p: 2 } } }).V_w // 0
 */
export const twoCoolers: Model<TwoCoolersGiven, TwoCoolers> = (given, trace = plain) => {
  const water = liquidOf(
    given,
    accept("p_out", "The pressure of the water, absolute,", given.p_out ?? ATMOSPHERE, {
      kind: "pressure",
      atLeast: 1,
      atMost: 1e7,
    }),
    "p_out",
    trace,
  );
  const system: System = {
    water,
    layout: given.layout,
    source: sourceOf(given, water, trace),
    shared: acceptPipe(given.shared, "_shared", "the shared pipe"),
    branches: [branchOf(given.one, "one"), branchOf(given.two, "two")],
  };
  const valves = given.wanted === "flows" ? valvesGiven(given) : valvesFor(system, given);
  const flows = flowsWith(system, valves);
  const total = totalOf(system, flows);
  refuse(
    !(Math.min(...flows) > STANDS_STILL),
    given.source === "pump" ? "h_z" : "h_w",
    "What is left to drive the water is so little that none flows in one of the coolers. More head, or less lift, is needed.",
  );

  const head = headAt(system, total, trace);
  const branch = (i: 0 | 1): CoolerBranch => {
    const name = NAMES[i];
    return {
      V_w: flows[i],
      K_v: valves[i],
      Delta_p_rest: restOf(system.branches[i], flows[i], water, trace, name),
      Delta_p_v: trace.use(
        valveDifference,
        { V_w: flows[i], K_v: valves[i], rho: water.rho },
        `valve of ${name}`,
      ),
    };
  };
  const moves = movesOf(system, valves);
  const [one, two] = [branch(0), branch(1)];
  const behindTwo = given.p_out ?? ATMOSPHERE;
  const behindOne = given.layout === "parallel" ? behindTwo : behindTwo + two.Delta_p_v + two.Delta_p_rest;
  noteChoking(water, { ...one, F_L: given.one.F_L, p_out: behindOne }, "one", trace);
  noteChoking(water, { ...two, F_L: given.two.F_L, p_out: behindTwo }, "two", trace);
  const [[own_1, other_1], [other_2, own_2]] = moves;
  const [by_1, by_2] = [Math.abs(other_2), Math.abs(other_1)];
  return {
    one,
    two,
    V_w: total,
    ...head,
    moves,
    first:
      system.layout === "series" || Math.abs(by_1 - by_2) < ALIKE ? "either" : by_1 > by_2 ? "one" : "two",
    left: system.layout === "series" ? 1 : Math.abs((other_1 * other_2) / (own_1 * own_2)),
    V_most: given.wanted === "settings" ? [mostOf(system, flows, 0), mostOf(system, flows, 1)] : undefined,
  };
};

type Pair = readonly [SI, SI];

interface Branch {
  readonly core: Core;
  readonly pipe: Pipe | undefined;
}

interface System {
  readonly water: Liquid;
  readonly layout: "parallel" | "series";
  readonly source: Source;
  readonly shared: Pipe;
  readonly branches: readonly [Branch, Branch];
}

const NAMES = ["cooler one", "cooler two"] as const;

const branchOf = ({ core, pipe }: CoolerBranchGiven, which: "one" | "two"): Branch => ({
  core: acceptCore(core, `_${which}`, `cooler ${which}`),
  pipe: pipe && acceptPipe(pipe, `_${which}`, `the pipe of cooler ${which}`),
});

const valvesGiven = ({ one, two }: TwoCoolersGiven): Pair => {
  const coefficient = { kind: "flowCoefficient", atLeast: 1e-9, atMost: 30 } as const;
  return [
    accept("K_v_one", "The flow coefficient of the valve of cooler one", one.K_v, coefficient),
    accept("K_v_two", "The flow coefficient of the valve of cooler two", two.K_v, coefficient),
  ];
};

const totalOf = ({ layout }: System, [one, two]: Pair): SI => (layout === "parallel" ? one + two : one);

function headAt({ source, shared, water }: System, V_w: SI, trace: Trace) {
  const { Delta_p_wall, Delta_p_other } = lossesOfPipe(shared, V_w, water, trace, "shared pipe");
  const Delta_p_shared = Delta_p_wall + Delta_p_other;
  const Delta_p_P = source.given(V_w, trace);
  const { Delta_p_z } = source;
  return { Delta_p_P, Delta_p_z, Delta_p_shared, Delta_p_branches: Delta_p_P - Delta_p_z - Delta_p_shared };
}

function restOf({ core, pipe }: Branch, V_w: SI, water: Liquid, trace: Trace, where: string): SI {
  const { Delta_p_wall, Delta_p_other } = pipe
    ? lossesOfPipe(pipe, V_w, water, trace, `pipe of ${where}`)
    : { Delta_p_wall: 0, Delta_p_other: 0 };
  const Delta_p_core = lossOfCore(core, V_w, water, trace, where);
  return trace.use(restLoss, { Delta_p_wall, Delta_p_other, Delta_p_core }, where);
}

const lossOf = (branch: Branch, K_v: SI, V_w: SI, water: Liquid): SI =>
  restOf(branch, V_w, water, plain, "") + valveDifference.compute({ V_w, K_v, rho: water.rho });

/** The flow that a pressure drives through a branch: at most what its valve alone would pass. */
function branchFlow(branch: Branch, K_v: SI, Delta_p: SI, water: Liquid): SI {
  if (Delta_p <= 0) return 0;
  const most = K_v * Math.sqrt(Delta_p / valveDifference.compute({ V_w: 1, K_v: 1, rho: water.rho }));
  return bracketedRoot((V_w) => lossOf(branch, K_v, V_w, water) - Delta_p, 0, most * (1 + 1e-9), {
    tolerance: 1e-14 * most,
  });
}

function flowsWith(system: System, valves: Pair): Pair {
  const { branches, water, source } = system;
  if (system.layout === "series") {
    const V_w = mostFlow(
      (V) =>
        headAt(system, V, plain).Delta_p_branches -
        lossOf(branches[0], valves[0], V, water) -
        lossOf(branches[1], valves[1], V, water),
      source,
    );
    return [V_w, V_w];
  }
  const flowsAt = (Delta_p: SI): Pair => [
    branchFlow(branches[0], valves[0], Delta_p, water),
    branchFlow(branches[1], valves[1], Delta_p, water),
  ];
  const excess = (Delta_p: SI) => {
    const total = totalOf(system, flowsAt(Delta_p));
    return total >= source.most ? -Delta_p : headAt(system, total, plain).Delta_p_branches - Delta_p;
  };
  // A pump's head may rise before it falls.
  let most = headAt(system, 0, plain).Delta_p_branches;
  while (excess(most) > 0) most *= 2;
  return flowsAt(bracketedRoot(excess, 0, most, { tolerance: 1e-13 * most }));
}

/** What is left at the wanted flows goes into the valves. */
function valvesFor(system: System, { layout, one, two }: TwoCoolersGiven): Pair {
  if (layout === "series")
    throw new DomainError(
      "layout",
      "One behind the other both coolers have the same flow, and one valve sets it. Two flows need coolers side by side.",
    );
  const wanted = { kind: "liquidFlow", atLeast: 1e-9, atMost: 10 } as const;
  const flows: Pair = [
    accept("V_w_one", "The flow of cooler one", one.V_w, wanted),
    accept("V_w_two", "The flow of cooler two", two.V_w, wanted),
  ];
  const total = flows[0] + flows[1];
  const { most } = system.source;
  refuse(
    total >= most,
    flows[0] > flows[1] ? "V_w_one" : "V_w_two",
    "At no head the pump gives only the bound, and both flows together are more. Less flow in either, or a larger pump, is needed.",
    { value: most, kind: "liquidFlow" },
  );
  const { Delta_p_branches } = headAt(system, total, plain);
  const { water, branches } = system;
  const valve = (i: 0 | 1): SI => {
    const Delta_p = Delta_p_branches - restOf(branches[i], flows[i], water, plain, "");
    const name = i === 0 ? "one" : "two";
    refuse(
      Delta_p <= 0,
      `V_w_${name}`,
      `With these flows nothing is left for the valve of cooler ${name}: pump, pipes and core take all. Less flow in either, a larger pump or wider pipes are needed.`,
    );
    return effectiveCoefficient.compute({ V_w: flows[i], Delta_p, rho: water.rho });
  };
  return [valve(0), valve(1)];
}

/** Found to 1e-12 of itself, from flows that leave something for both valves. */
function mostOf(system: System, flows: Pair, which: 0 | 1): SI {
  const { branches, water, source } = system;
  const left = (V_w: SI): SI => {
    const tried: Pair = which === 0 ? [V_w, flows[1]] : [flows[0], V_w];
    const total = tried[0] + tried[1];
    if (total >= source.most) return -1;
    const { Delta_p_branches } = headAt(system, total, plain);
    const rests = ([0, 1] as const).map((i) => restOf(branches[i], tried[i], water, plain, ""));
    return Delta_p_branches - Math.max(...rests);
  };
  const from = flows[which];
  let above = 2 * from;
  while (above < source.most && left(above) > 0) above *= 2;
  return left(above) > 0 ? above : bracketedRoot(left, from, above, { tolerance: 1e-12 * above });
}

interface InValve {
  readonly Delta_p_v: SI;
  readonly F_L: SI | undefined;
  readonly p_out: SI;
}

function noteChoking(water: Liquid, valve: InValve, which: "one" | "two", trace: Trace): void {
  const F_L = accept(
    `F_L_${which}`,
    `The recovery factor of the valve of cooler ${which}`,
    valve.F_L ?? 0.9,
    {
      kind: "ratio",
      atLeast: 0.2,
      atMost: 1,
    },
  );
  const where = `valve of cooler ${which}`;
  const { p_v, p_crit } = water;
  const F_F = trace.use(criticalRatioFactor, { p_v, p_crit }, "water");
  const p_in = valve.p_out + valve.Delta_p_v;
  const Delta_p_ch = trace.use(chokedDifference, { F_LP: F_L, F_P: 1, p_in, F_F, p_v }, where);
  if (valve.Delta_p_v < Delta_p_ch) return;
  trace.note({
    about: `Delta_p_v_${which}`,
    says: `The valve of cooler ${which} is choked from the bound on, and passes less than is computed here. A smaller drop in it, or a valve with a higher recovery factor, is needed.`,
    limit: { value: Math.max(0, Delta_p_ch), kind: "pressureDifference" },
  });
}

function movesOf(system: System, valves: Pair): TwoCoolers["moves"] {
  const by = (j: 0 | 1): Pair => {
    const nudged = (factor: number): Pair =>
      j === 0 ? [valves[0] * factor, valves[1]] : [valves[0], valves[1] * factor];
    const [up, down] = [flowsWith(system, nudged(1 + NUDGE)), flowsWith(system, nudged(1 - NUDGE))];
    const span = Math.log((1 + NUDGE) / (1 - NUDGE));
    return [Math.log(up[0] / down[0]) / span, Math.log(up[1] / down[1]) / span];
  };
  const [one, two] = [by(0), by(1)];
  return [
    [one[0], two[0]],
    [one[1], two[1]],
  ];
}
