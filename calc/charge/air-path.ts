import type { Cooler } from "../exchanger/cooler.ts";
import { pressureAfterLoss } from "../flow/pressure-after-loss.ts";
import { gasConstant } from "../fluids/gas-constant.ts";
import { refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import type { Trace } from "../relation/trace.ts";
import { type AirState, airState, type Stage, type StagePath, throughStage } from "./stage.ts";

/** What does not change with the pressure ratios: ambient air in Pa, K and kg/kg, the loss before the first compressor in Pa. */
export interface Site {
  readonly p_0: SI;
  readonly T_0: SI;
  readonly w: SI;
  readonly Delta_p_01: SI;
  readonly stages: readonly PathStage[];
}

/** A stage, and the inputs that hold what the path may refuse in it. */
export interface PathStage extends Stage {
  readonly fields: { readonly T_out: string; readonly Delta_p: string };
}

export interface AirPath {
  readonly ambient: AirState;
  readonly inlet: AirState;
  readonly stages: readonly StagePath[];
  readonly end: AirState;
}

/** The states along the path, one pressure ratio a stage. Where a loss takes all pressure the path ends with no density. */
export function follow(site: Site, ratios: readonly SI[], trace: Trace): AirPath {
  const { p_0, T_0: T, w, Delta_p_01 } = site;
  const first = site.stages[0]?.words.compressor;
  const R_m = trace.use(gasConstant, { w }, "ambient air");
  const ambient = airState({ p: p_0, T, w, R_m }, trace, "ambient air");
  const p_1 = trace.use(pressureAfterLoss, { p_in: p_0, Delta_p: Delta_p_01 }, `${first} inlet`);
  const inlet = airState({ p: p_1, T, w, R_m }, trace, `${first} inlet`);
  const stages: StagePath[] = [];
  let end = inlet;
  for (const [i, stage] of site.stages.entries()) {
    const path = throughStage(stage, end, ratios[i] ?? 1, trace);
    stages.push(path);
    end = path.after;
    if (end.p <= 0) break;
  }
  return { ambient, inlet, stages, end };
}

/** Refuses a loss that leaves no pressure, and a cooler whose known outlet is hotter than its inlet. */
export function checkPath(site: Site, path: AirPath): void {
  for (const [i, { cooler, fields }] of site.stages.entries()) {
    const stage = path.stages[i];
    if (stage) checkStage(cooler, fields, stage);
  }
}

/** The same of one stage. */
export function checkStage(
  cooler: Cooler,
  fields: PathStage["fields"],
  { before, after }: Pick<StagePath, "before" | "after">,
): void {
  if (cooler.kind === "none") return;
  refuse(
    after.p <= 0,
    fields.Delta_p,
    "The loss of the cooler leaves no pressure behind it. It has to be below the pressure before the cooler.",
    { value: before.p, kind: "pressureDifference" },
  );
  refuse(
    cooler.kind === "temperature" && cooler.T_out > before.T,
    fields.T_out,
    "The cooler outlet is hotter than the air that enters it. It has to be at or below the compressor outlet temperature.",
    { value: before.T, kind: "temperature" },
  );
}
