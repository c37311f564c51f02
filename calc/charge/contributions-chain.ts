import { acceptCompressor } from "../compression/compress.ts";
import { acceptCooler, type Cooler } from "../exchanger/cooler.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { checkPath } from "./air-path.ts";
import type { Device } from "./counterfactual-path.ts";
import { type AirState, airState, type Stage, type StagePath, stageWords, throughStage } from "./stage.ts";

type OfStage<N extends "1" | "2"> = Readonly<
  Partial<Record<`r_${N}` | `eta_s_${N}` | `P_${N}` | `T_w_in_${N}`, SI>> &
    Partial<Record<`cooler_${N}`, "fitted" | "none">>
>;

/**
 * Air at the inlet in Pa absolute, K and kg/kg (dry unless given); one stage or two, each with the ratio and isentropic efficiency
 * of its compressor, and with a cooler or none: effectiveness, water inlet in K, and loss in Pa with everything fitted.
 */
export interface ChainGiven extends OfStage<"1">, OfStage<"2"> {
  readonly p_1?: SI | undefined;
  readonly T_1?: SI | undefined;
  readonly w?: SI | undefined;
  readonly stages: "one" | "two";
  readonly Delta_p_23?: SI | undefined;
  readonly Delta_p_45?: SI | undefined;
}

export interface ChainStage extends Stage {
  readonly r: SI;
  readonly cooler: Exclude<Cooler, { kind: "temperature" }>;
  readonly fields: { readonly T_out: string; readonly Delta_p: string };
}

export interface Chain {
  readonly inlet: AirState;
  readonly stages: readonly ChainStage[];
}

/** Checks all data; throws a DomainError that names its field. */
export function acceptChain(given: ChainGiven, trace: Trace): Chain {
  const p = accept("p_1", "The pressure at the inlet, absolute,", given.p_1, {
    kind: "pressure",
    above: 0,
    atMost: 5e6,
  });
  const T = accept("T_1", "The temperature at the inlet", given.T_1, {
    kind: "temperature",
    atLeast: 173.15,
    atMost: 500,
  });
  const w = accept("w", "The humidity ratio", given.w ?? 0, { kind: "humidityRatio", atLeast: 0, atMost: 1 });
  const isTwo = given.stages === "two";
  const stages = isTwo ? [acceptStage(given, "1", "first"), acceptStage(given, "2", "second")] : [];
  const R_m = trace.use(gasConstant, { w }, "inlet");
  return {
    inlet: airState({ p, T, w, R_m }, trace, "inlet"),
    stages: isTwo ? stages : [acceptStage(given, "1", "only")],
  };
}

function acceptStage(given: ChainGiven, n: "1" | "2", words: keyof typeof stageWords): ChainStage {
  const { compressor } = stageWords[words];
  const r = accept(`r_${n}`, `The pressure ratio of the ${compressor}`, given[`r_${n}`], {
    kind: "ratio",
    atLeast: 1,
    atMost: 10,
  });
  const machine = acceptCompressor(
    { efficiency: "isentropic", eta_s: given[`eta_s_${n}`], heatCapacity: "real" },
    { eta_s: `eta_s_${n}`, eta_p: `eta_s_${n}` },
  );
  const Delta_p = n === "1" ? "Delta_p_23" : "Delta_p_45";
  const fields = { P: `P_${n}`, T_w_in: `T_w_in_${n}`, T_out: `P_${n}`, Delta_p };
  const cooler = acceptCooler(
    {
      cooler: given[`cooler_${n}`] === "fitted" ? "effectiveness" : "none",
      P: given[`P_${n}`],
      T_w_in: given[`T_w_in_${n}`],
      Delta_p: given[Delta_p],
    },
    fields,
  ) as ChainStage["cooler"];
  return { r, machine, cooler, words: stageWords[words], fields };
}

/** The whole chain, step by step. Throws a DomainError for a loss that leaves no pressure. */
export function throughChain({ inlet, stages }: Chain, trace: Trace): readonly StagePath[] {
  const paths: StagePath[] = [];
  const { p: p_0, T: T_0, w } = inlet;
  for (const stage of stages) {
    const path = throughStage(stage, paths.at(-1)?.after ?? inlet, stage.r, trace);
    paths.push(path);
    checkPath(
      { p_0, T_0, w, Delta_p_01: 0, stages },
      { ambient: inlet, inlet, stages: paths, end: path.after },
    );
  }
  return paths;
}

/** What each device is called in the working, in the order of the air. */
export interface NamedDevice {
  readonly id: "C1" | "K1" | "C2" | "K2";
  readonly name: string;
  readonly device: Device;
}

/** The hardware that is fitted, in the order of the air. */
export const devicesOf = ({ stages }: Chain): readonly NamedDevice[] =>
  stages.flatMap(({ machine, r, cooler, words }, i): NamedDevice[] => [
    { id: i === 0 ? "C1" : "C2", name: words.compressor, device: { kind: "compressor", machine, r } },
    ...(cooler.kind === "none"
      ? []
      : [{ id: i === 0 ? "K1" : "K2", name: words.cooler, device: { kind: "cooler", cooler } } as const]),
  ]);
