import { type Compressor, compress } from "../compression/compress.ts";
import { pressureRatio } from "../compression/pressure-ratio.ts";
import { shaftPower } from "../compression/shaft-power.ts";
import { dryAirFlow } from "../engine/dry-air-flow.ts";
import { moistAirFlow } from "../engine/moist-air-flow.ts";
import type { Cooler } from "../exchanger/cooler.ts";
import { pressureBeforeLoss } from "../flow/pressure-before-loss.ts";
import type { Span } from "../numerics/lowest-in.ts";
import type { SI } from "../quantity/domain-error.ts";
import { plain, type Trace } from "../relation/trace.ts";
import { type AirState, type StagePath, stageWords, throughStage } from "./stage.ts";

/** Two compressors between an inlet and a wanted pressure after the second cooler, Pa; moist air at the inlet in kg/s. */
export interface Pair {
  readonly inlet: AirState;
  readonly m_a: SI;
  readonly p_m: SI;
  /** A second cooler's loss is a pressure, not a part of one: what is wanted stands behind it. */
  readonly first: { readonly machine: Compressor; readonly cooler: Cooler };
  readonly second: { readonly machine: Compressor; readonly cooler: Cooler };
}

/** What a split of the pressure costs: W of each shaft, and the temperatures that hardware limits, K. */
export interface SplitWork {
  readonly r_2: SI;
  readonly T_2: SI;
  readonly T_3: SI;
  readonly T_4: SI;
  readonly W_c1: SI;
  readonly W_c2: SI;
}

export interface Split extends SplitWork {
  readonly first: StagePath;
  readonly second: StagePath;
  /** Dry air, and moist air into the second compressor, kg/s. */
  readonly m_da: SI;
  readonly m_2: SI;
}

/** Pa after the second compressor. */
function pressureAt4({ p_m, second: { cooler } }: Pair, trace: Trace): SI {
  const Delta_p = cooler.kind === "none" ? 0 : cooler.Delta_p;
  return trace.use(pressureBeforeLoss, { p_out: p_m, Delta_p }, stageWords.second.cooler);
}

/** The ratio of the first compressor behind whose cooler the pressure p_3 in Pa is left. */
function firstFor(p_3: SI, { inlet, first: { cooler } }: Pair): SI {
  if (cooler.kind === "none") return p_3 / inlet.p;
  const p_2 = cooler.zeta === undefined ? p_3 + cooler.Delta_p : p_3 / (1 - cooler.zeta);
  return p_2 / inlet.p;
}

/**
 * Ratios of the first compressor at which neither compressor expands, and the second one's ratio is `most` at most. Empty
 * where the wanted pressure is below the inlet's.
 */
export function rangeOfFirst(pair: Pair, most: number): Span {
  const p_4 = pressureAt4(pair, plain);
  return { from: Math.max(1, firstFor(p_4 / most, pair)), to: firstFor(p_4, pair) };
}

/** The ratio at which both compressors do the same, the loss between them made up for. */
export function equalRatio(pair: Pair): SI {
  const { inlet, first } = pair;
  const p_4 = pressureAt4(pair, plain);
  const { cooler } = first;
  if (cooler.kind === "none") return Math.sqrt(p_4 / inlet.p);
  if (cooler.zeta !== undefined) return Math.sqrt(p_4 / (inlet.p * (1 - cooler.zeta)));
  // r (r p_1 - Δp) = p_4
  return (cooler.Delta_p + Math.sqrt(cooler.Delta_p ** 2 + 4 * inlet.p * p_4)) / (2 * inlet.p);
}

/** The pair with the first compressor at r_1, which has to be in `rangeOfFirst`. */
export function splitAt(pair: Pair, r_1: SI, trace: Trace): Split {
  const { inlet, m_a } = pair;
  const p_4 = pressureAt4(pair, trace);
  const first = throughStage({ ...pair.first, words: stageWords.first }, inlet, r_1, trace);
  const between = first.after;
  // At the end of the range rounding may leave a ratio a hair below 1.
  const r_2 = Math.max(
    trace.use(pressureRatio, { p_out: p_4, p_in: between.p }, stageWords.second.compressor),
    1,
  );
  const second = throughStage({ ...pair.second, words: stageWords.second }, between, r_2, trace);

  const W_c1 = trace.use(shaftPower, { m_a, Delta_h: first.compressed.Delta_h }, stageWords.first.compressor);
  const m_da = trace.use(dryAirFlow, { m_a, w: inlet.w }, "air");
  const m_2 = trace.use(moistAirFlow, { m_da, w: between.w }, stageWords.second.compressor);
  const W_c2 = trace.use(
    shaftPower,
    { m_a: m_2, Delta_h: second.compressed.Delta_h },
    stageWords.second.compressor,
  );
  return {
    r_2,
    T_2: first.before.T,
    T_3: between.T,
    T_4: second.before.T,
    W_c1,
    W_c2,
    first,
    second,
    m_da,
    m_2,
  };
}

/** W of both shafts at a split. */
export function workAt(pair: Pair, r_1: SI): SI {
  const { W_c1, W_c2 } = splitAt(pair, r_1, plain);
  return W_c1 + W_c2;
}

/** One compressor alone that does the work of both, with the second cooler behind it: W, K, and its ratio. */
export function singleStage(
  pair: Pair,
  machine: Compressor,
  trace: Trace,
): { readonly r: SI; readonly W_c: SI; readonly T_out: SI } {
  const { inlet, m_a } = pair;
  const where = "one compressor instead";
  const r = trace.use(pressureRatio, { p_out: pressureAt4(pair, trace), p_in: inlet.p }, where);
  const { T, w, R_m } = inlet;
  const { Delta_h, T_out } = compress(machine, { T_in: T, w, R_m, r }, trace, where);
  return { r, W_c: trace.use(shaftPower, { m_a, Delta_h }, where), T_out };
}
