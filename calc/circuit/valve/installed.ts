import { accept } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { type Model, plain } from "../../relation/trace.ts";
import { type CharacteristicGiven, characteristicOf } from "./characteristic.ts";
import { installedFlow } from "./installed-flow.ts";

/** A valve's characteristic, its authority, and its position from 0 to 1. */
export interface InstalledGiven extends CharacteristicGiven {
  readonly N_v?: SI | undefined;
  readonly x_v?: SI | undefined;
}

/** `gain` is the change of the part q_v of the full flow over that of the position. */
export interface Installed {
  readonly phi_v: SI;
  readonly q_v: SI;
  readonly gain: SI;
}

/** Half the step over which a gain is taken: changes of the flow well above rounding, and no curve bends within it. */
const STEP = 1e-4;

/**
 * What a valve does in its circuit: the part of the full flow at a position, from its authority, and the gain there. The
 * head is constant and all else loses with the square of the flow. Notes an authority too small to steer with.
 *
 * @example installed({ characteristic: "equal-percentage", R_0: 50, N_v: 0.3, x_v: 0.5 }).q_v // 0.25238
 */
export const installed: Model<InstalledGiven, Installed> = (given, trace = plain) => {
  const N_v = accept("N_v", "The authority of the valve", given.N_v, {
    kind: "fraction",
    atLeast: 1e-6,
    atMost: 1,
  });
  const x_v = accept("x_v", "The position of the valve", given.x_v, {
    kind: "fraction",
    atLeast: 0,
    atMost: 1,
  });
  const { opening } = characteristicOf(given);
  const flowAt = (x: SI) => {
    const phi_v = opening(x);
    return phi_v === 0 ? 0 : installedFlow.compute({ N_v, phi_v });
  };
  const phi_v = opening(x_v, trace);
  const q_v = phi_v === 0 ? 0 : trace.use(installedFlow, { N_v, phi_v }, "valve");
  const [from, to] = [Math.max(0, x_v - STEP), Math.min(1, x_v + STEP)];
  noteAuthority(N_v, trace);
  return { phi_v, q_v, gain: (flowAt(to) - flowAt(from)) / (to - from) };
};

/** Common practice, no source: below the first a valve only opens and shuts, from the second on it steers well. */
export const AUTHORITY = { least: 0.1, good: 0.3 } as const;

export function noteAuthority(N_v: SI, trace: typeof plain): void {
  if (N_v >= AUTHORITY.good) return;
  trace.note({
    about: "N_v",
    says:
      N_v < AUTHORITY.least
        ? "Below the bound a valve hardly steers: nearly all of the change comes in its first turn. A smaller valve is needed."
        : "Below the bound a valve steers more in its first turns than in its last. A smaller valve would do better.",
    limit: { value: N_v < AUTHORITY.least ? AUTHORITY.least : AUTHORITY.good, kind: "fraction" },
  });
}
