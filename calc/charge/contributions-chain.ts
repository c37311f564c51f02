import { acceptRatio } from "../compression/accept-ratio.ts";
import { acceptCompressor } from "../compression/compress.ts";
import { acceptCooler, type Cooler, type CoolerFields, type CoolerGiven } from "../exchanger/cooler.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { acceptInlet, type InletGiven } from "./accept-inlet.ts";
import { checkStage } from "./air-path.ts";
import { firstCoolerFields, secondCoolerFields } from "./cooler-fields.ts";
import type { Device } from "./counterfactual-path.ts";
import {
  type AirState,
  airState,
  type Stage,
  type StagePath,
  type StageWords,
  stageWords,
  throughStage,
} from "./stage.ts";

type KnownCooler = Exclude<CoolerGiven["cooler"], "temperature">;

/**
 * Air at the inlet; one stage or two, each with the ratio and isentropic efficiency of its compressor, and with a cooler or none:
 * effectiveness, water inlet in K, and loss in Pa with everything fitted.
 */
export interface ChainGiven extends InletGiven {
  readonly stages: "one" | "two";
  readonly r_1?: SI | undefined;
  readonly eta_s?: SI | undefined;
  readonly cooler?: KnownCooler | undefined;
  readonly P?: SI | undefined;
  readonly T_w_in?: SI | undefined;
  readonly Delta_p_23?: SI | undefined;
  readonly r_2?: SI | undefined;
  readonly eta_s_2?: SI | undefined;
  readonly cooler_45?: KnownCooler | undefined;
  readonly P_45?: SI | undefined;
  readonly T_w_in_45?: SI | undefined;
  readonly Delta_p_45?: SI | undefined;
}

export interface ChainStage extends Stage {
  readonly r: SI;
  readonly cooler: Exclude<Cooler, { kind: "temperature" }>;
  readonly fields: CoolerFields;
}

/** The inputs that hold the data of each stage. */
const fieldsOf = {
  first: { r: "r_1", eta_s: "eta_s", cooler: "cooler", ofCooler: firstCoolerFields },
  second: { r: "r_2", eta_s: "eta_s_2", cooler: "cooler_45", ofCooler: secondCoolerFields },
} as const;

export interface Chain {
  readonly inlet: AirState;
  readonly stages: readonly ChainStage[];
}

/** Checks all data; throws a DomainError that names its field. */
export function acceptChain(given: ChainGiven, trace: Trace): Chain {
  const { p, T, w } = acceptInlet(given);
  const stages =
    given.stages === "two"
      ? [acceptStage(given, "first", stageWords.first), acceptStage(given, "second", stageWords.second)]
      : [acceptStage(given, "first", stageWords.only)];
  const R_m = trace.use(gasConstant, { w }, "inlet");
  return { inlet: airState({ p, T, w, R_m }, trace, "inlet"), stages };
}

function acceptStage(given: ChainGiven, which: keyof typeof fieldsOf, words: StageWords): ChainStage {
  const { r: ratio, eta_s, cooler: kind, ofCooler: fields } = fieldsOf[which];
  const r = acceptRatio(given[ratio], ratio, `The pressure ratio of the ${words.compressor}`);
  const machine = acceptCompressor(
    { efficiency: "isentropic", eta_s: given[eta_s], heatCapacity: "real" },
    { eta_s, eta_p: eta_s },
  );
  const cooler = acceptCooler(
    {
      cooler: given[kind] ?? "none",
      P: given[fields.P],
      T_w_in: given[fields.T_w_in],
      Delta_p: given[fields.Delta_p],
    },
    fields,
  ) as ChainStage["cooler"];
  return { r, machine, cooler, words, fields };
}

/** The whole chain, step by step. Throws a DomainError for a loss that leaves no pressure. */
export function throughChain({ inlet, stages }: Chain, trace: Trace): readonly StagePath[] {
  const paths: StagePath[] = [];
  for (const stage of stages) {
    const path = throughStage(stage, paths.at(-1)?.after ?? inlet, stage.r, trace);
    paths.push(path);
    checkStage(stage.cooler, stage.fields, path);
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
