import { bracketedRoot } from "../../numerics/bracketed-root.ts";
import { accept, refuse } from "../../quantity/accept.ts";
import type { SI } from "../../quantity/domain-error.ts";
import { type Model, plain } from "../../relation/trace.ts";
import {
  type Characteristic,
  type CharacteristicGiven,
  characteristicOf,
  inOwnUnit,
  positionGiven,
} from "./characteristic.ts";
import { installedFlow } from "./installed-flow.ts";

/**
 * A valve's characteristic, its authority, and its position from 0 to 1 or, with a table, in the unit of that; or the part
 * q_v of the full flow that it shall pass.
 */
export interface InstalledGiven extends CharacteristicGiven {
  readonly wanted?: "flow" | "position" | undefined;
  readonly N_v?: SI | undefined;
  readonly x_v?: SI | undefined;
  readonly y_v?: SI | undefined;
  readonly q_v?: SI | undefined;
}

/**
 * `gain` is the change of the part q_v of the full flow over that of the position; `y_v` the position in the unit of the
 * table, without one the same as x_v, and `usual` the part of the travel in which valves are worked, in that unit.
 */
export interface Installed {
  readonly x_v: SI;
  readonly y_v: SI;
  readonly phi_v: SI;
  readonly q_v: SI;
  readonly gain: SI;
  readonly usual: readonly [from: SI, to: SI];
}

/** Half the step over which a gain is taken: changes of the flow well above rounding, and no curve bends within it. */
const STEP = 1e-4;

/**
 * What a valve does in its circuit: the part of the full flow at a position, or the position for a part of the flow, from
 * its authority, and the gain there. The head is constant and all else loses with the square of the flow. Notes an authority
 * too small to steer with, and a position near an end.
 *
 * @example installed({ characteristic: "equal-percentage", R_0: 50, N_v: 0.3, x_v: 0.5 }).q_v // 0.25238
 */
export const installed: Model<InstalledGiven, Installed> = (given, trace = plain) => {
  const N_v = accept("N_v", "The authority of the valve", given.N_v, {
    kind: "fraction",
    atLeast: 1e-6,
    atMost: 1,
  });
  const characteristic = characteristicOf(given);
  const { opening, ends } = characteristic;
  const flowAt = (x: SI) => flowOf(N_v, opening(x));
  const x_v =
    given.wanted === "position"
      ? positionFor(given.q_v, N_v, characteristic)
      : positionGiven(given, characteristic);
  const phi_v = opening(x_v, trace);
  const q_v = phi_v === 0 ? 0 : trace.use(installedFlow, { N_v, phi_v }, "valve");
  const [from, to] = [Math.max(0, x_v - STEP), Math.min(1, x_v + STEP)];
  noteAuthority(N_v, trace);
  noteTravel(x_v, ends, given.characteristic === "table" ? "y_v" : "x_v", trace);
  return {
    x_v,
    y_v: inOwnUnit(characteristic, x_v),
    phi_v,
    q_v,
    gain: (flowAt(to) - flowAt(from)) / (to - from),
    usual: [inOwnUnit(characteristic, TRAVEL.least), inOwnUnit(characteristic, TRAVEL.most)],
  };
};

const flowOf = (N_v: SI, phi_v: SI): SI => (phi_v === 0 ? 0 : installedFlow.compute({ N_v, phi_v }));

function positionFor(wanted: SI | undefined, N_v: SI, { least, position }: Characteristic): SI {
  const q_v = accept("q_v", "The wanted part of the full flow", wanted, {
    kind: "fraction",
    atLeast: 1e-6,
    atMost: 1,
  });
  const shut = flowOf(N_v, least);
  refuse(
    q_v < shut,
    "q_v",
    "Just before it closes the valve still passes the bound. More flow or a smaller valve is needed.",
    { value: shut, kind: "fraction" },
  );
  if (q_v >= flowOf(N_v, 1)) return 1;
  return position(
    bracketedRoot((phi_v) => flowOf(N_v, phi_v) - q_v, least, 1, { tolerance: 1e-15 * q_v, limit: 300 }),
  );
}

/** Common practice, no source: between these a valve is worked, with something left for either side. */
export const TRAVEL = { least: 0.2, most: 0.8 } as const;

/** Notes a position outside the usual part of the travel, about the input or result that holds it. */
export function noteTravel(
  x_v: SI,
  [closed, open]: readonly [SI, SI],
  about: string,
  trace: typeof plain,
): void {
  const bound = (x: SI) =>
    about === "y_v"
      ? ({ value: closed + x * (open - closed), kind: "ratio" } as const)
      : ({ value: x, kind: "fraction" } as const);
  if (x_v < TRAVEL.least)
    trace.note({
      about,
      says: "Below the bound the valve is nearly shut, where play and wear decide what it passes, by common practice. A smaller valve would work further open.",
      limit: bound(TRAVEL.least),
    });
  if (x_v > TRAVEL.most)
    trace.note({
      about,
      says: "Above the bound the valve is nearly open and has little left to add, by common practice. A larger valve or less loss beside it would leave some.",
      limit: bound(TRAVEL.most),
    });
}

/** Common practice, no source: below the first a valve only opens and shuts, from the second on it steers well. */
export const AUTHORITY = { least: 0.1, good: 0.3 } as const;

export function noteAuthority(N_v: SI, trace: typeof plain): void {
  if (N_v >= AUTHORITY.good) return;
  trace.note({
    about: "N_v",
    says:
      N_v < AUTHORITY.least
        ? "Below the bound the pipe rules the flow and not the valve: most of the change comes in a small part of its travel. A smaller valve is needed."
        : "Below the bound a valve changes the flow much less near its open end than its own curve says. A smaller valve would do better.",
    limit: { value: N_v < AUTHORITY.least ? AUTHORITY.least : AUTHORITY.good, kind: "fraction" },
  });
}
