import { type Compressed, type Compressor, compress } from "../compression/compress.ts";
import { outletPressure } from "../compression/outlet-pressure.ts";
import { type Cooler, cool } from "../exchanger/cooler.ts";
import { keptHumidity } from "../fluids/condensation.ts";
import { density } from "../fluids/density.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";

/** Air at one station: Pa absolute, K, kg/kg, J/(kg K), kg/m³. */
export interface AirState {
  readonly p: SI;
  readonly T: SI;
  readonly w: SI;
  readonly R_m: SI;
  readonly rho: SI;
}

/** A compressor and the cooler behind it, which may be none. */
export interface Stage {
  readonly machine: Compressor;
  readonly cooler: Cooler;
  readonly words: StageWords;
}

/** What the parts of a stage are called in the working. */
export interface StageWords {
  readonly compressor: string;
  readonly cooler: string;
}

/** The only stage, or one of two. */
export const stageWords = {
  only: { compressor: "compressor", cooler: "cooler" },
  first: { compressor: "first compressor", cooler: "first cooler" },
  second: { compressor: "second compressor", cooler: "second cooler" },
} as const satisfies Record<string, StageWords>;

/** What comes out of a compressor, and how. */
interface Compression {
  readonly compressed: Compressed;
  readonly before: AirState;
}

export interface StagePath extends Compression {
  readonly inlet: AirState;
  /** After the cooler; without one the same as before it. Without any pressure left its density is zero. */
  readonly after: AirState;
  /** Effectiveness of the cooler, where water says it. */
  readonly P: SI | undefined;
}

/** The state of air whose gas constant is known. */
export const airState = ({ p, T, w, R_m }: Omit<AirState, "rho">, trace: Trace, where: string): AirState => ({
  p,
  T,
  w,
  R_m,
  rho: trace.use(density, { p, R_m, T }, where),
});

/** One stage at the pressure ratio r: compressed, cooled, and freed of the water that condenses at the pressure there. */
export function throughStage(stage: Stage, inlet: AirState, r: SI, trace: Trace): StagePath {
  const { machine, cooler, words } = stage;
  const compression = throughCompressor(machine, inlet, r, trace, words.compressor);
  const { after, P } = throughCooler(cooler, compression.before, trace, words.cooler);
  return { inlet, ...compression, after, P };
}

/** A compressor by itself at the pressure ratio r. */
export function throughCompressor(
  machine: Compressor,
  inlet: AirState,
  r: SI,
  trace: Trace,
  where: string,
): Compression {
  const { T, w, R_m } = inlet;
  const p = trace.use(outletPressure, { r, p_in: inlet.p }, where);
  const compressed = compress(machine, { T_in: T, w, R_m, r }, trace, where);
  return { compressed, before: airState({ p, T: compressed.T_out, w, R_m }, trace, `${where} outlet`) };
}

/** A cooler by itself, or none. */
export function throughCooler(
  cooler: Cooler,
  before: AirState,
  trace: Trace,
  where: string,
): Pick<StagePath, "after" | "P"> {
  if (cooler.kind === "none") return { after: before, P: undefined };
  const { p, T, P } = cool(cooler, before, trace, where);
  if (p <= 0) return { after: { ...before, p, T, rho: 0 }, P };
  const w = keptHumidity({ T, p, w: before.w }, trace, `after the ${where}, saturated`);
  const R_m = w === before.w ? before.R_m : trace.use(gasConstant, { w }, `after the ${where}`);
  return { after: airState({ p, T, w, R_m }, trace, `after the ${where}`), P };
}
