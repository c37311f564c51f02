import { decayArea } from "../../numerics/decay-area.ts";
import { accept, refuse } from "../../quantity/accept.ts";
import type { Plan } from "./plan.ts";

/** Steeper banks would take seconds: transfer units of many channels, and the ratio of heat-capacity rates. */
const STEEPEST = 1000;

/** Throws a DomainError unless both are numbers of 0 or more, and R no larger than the field can be computed for. */
export function acceptFlow(NTU: number, R: number): void {
  accept("NTU", "The number of transfer units", NTU, { kind: "ratio", atLeast: 0 });
  accept("R", "The ratio of heat-capacity rates", R, { kind: "ratio", atLeast: 0, atMost: STEEPEST });
}

/** How often one stream falls to a part of 1/e on its way through one bank. */
function steepness({ NTU, R, channels, air }: Plan): number {
  if (channels === "many") return air === "mixed" ? decayArea(R, NTU) : NTU * Math.max(1, R);
  return air === "mixed" ? 0 : R * decayArea(1, NTU);
}

/**
 * Throws a DomainError where a bank of many channels is too steep: `steepest` transfer units, the larger number of both
 * streams, in a core of `NTU`.
 */
export function refuseSteep(NTU: number, steepest: number): void {
  refuse(
    steepest > STEEPEST,
    "NTU",
    "These are more transfer units than can be computed for many channels, at this ratio of heat-capacity rates. They may be as many as the bound.",
    { value: (NTU * STEEPEST) / steepest, kind: "ratio" },
  );
}

/**
 * Cells each way that a bank needs so that none is steeper than `inACell`. Throws a DomainError where many channels would
 * need too many; one channel never does.
 */
export function cellsNeeded(plan: Plan, NTU: number, inACell: number): number {
  if (plan.channels === "many") refuseSteep(NTU, plan.NTU * (plan.air === "mixed" ? 1 : Math.max(1, plan.R)));
  return Math.ceil(steepness(plan) / inACell);
}

export const noField = () => new RangeError("streams in a shell have no field to compute");
