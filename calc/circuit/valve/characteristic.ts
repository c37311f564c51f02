import { bracketedRoot } from "../../numerics/bracketed-root.ts";
import { monotoneCurve } from "../../numerics/monotone-curve.ts";
import type { Points } from "../../numerics/straight-lines.ts";
import { accept } from "../../quantity/accept.ts";
import { DomainError, type SI } from "../../quantity/domain-error.ts";
import { plain, type Trace } from "../../relation/trace.ts";
import { equalPercentageCharacteristic } from "./equal-percentage-characteristic.ts";
import { linearCharacteristic } from "./linear-characteristic.ts";
import { quickOpeningCharacteristic } from "./quick-opening-characteristic.ts";

/**
 * How a valve opens: by a usual characteristic, or by a table of its own. A table holds positions in any unit of one's own
 * (turns, degrees, per cent), from closed to open, and the flow or flow coefficient at each in any unit of its own.
 */
export interface CharacteristicGiven {
  readonly characteristic: "linear" | "equal-percentage" | "quick-opening" | "table";
  readonly R_0?: SI | undefined;
  readonly table?: Points | undefined;
}

/**
 * `opening` is the part of the full flow coefficient at a position from 0 to 1, `position` its inverse. Positions of a table
 * are parts of its span; `least` is the opening at 0. `ends` are the positions closed and open in the unit of the table, and
 * 0 and 1 without one.
 */
export interface Characteristic {
  readonly least: SI;
  readonly ends: readonly [closed: SI, open: SI];
  opening(x_v: SI, trace?: Trace): SI;
  position(phi_v: SI): SI;
}

/** Throws a DomainError that names R_0 or table. */
export function characteristicOf(given: CharacteristicGiven): Characteristic {
  const opening = openingOf(given);
  const least = opening(0, plain);
  return {
    least,
    ends: endsOf(given),
    opening: (x_v, trace = plain) => opening(acceptPosition(x_v), trace),
    position: (phi_v) => {
      accept("phi_v", "The part of the full flow coefficient", phi_v, {
        kind: "fraction",
        atLeast: least,
        atMost: 1,
      });
      if (phi_v <= least) return 0;
      if (phi_v >= 1) return 1;
      // A valve may open with a vertical slope, where a small position is already much flow.
      return bracketedRoot((x) => opening(x, plain) - phi_v, 0, 1, { tolerance: 1e-26, limit: 300 });
    },
  };
}

/** A position from 0 to 1, in the unit of the table. */
export const inOwnUnit = ({ ends: [closed, open] }: Characteristic, x_v: SI): SI =>
  closed + x_v * (open - closed);

/**
 * The position from 0 to 1 of one that is given: as a part of the travel, or of a valve with a table in the unit of the
 * table. Throws a DomainError that names x_v or y_v.
 */
export function positionGiven(
  { characteristic, x_v, y_v }: PositionGiven,
  { ends: [closed, open] }: Characteristic,
): SI {
  if (characteristic !== "table" || y_v === undefined) return acceptPosition(x_v);
  const y = accept("y_v", "The position of the valve", y_v, {
    kind: "ratio",
    atLeast: closed,
    atMost: open,
  });
  return Math.min(1, Math.max(0, (y - closed) / (open - closed)));
}

/** The position of a valve: from 0 to 1, or in the unit of its table. */
export interface PositionGiven {
  readonly characteristic: CharacteristicGiven["characteristic"];
  readonly x_v?: SI | undefined;
  readonly y_v?: SI | undefined;
}

const acceptPosition = (x_v: SI | undefined): SI =>
  accept("x_v", "The position of the valve", x_v, { kind: "fraction", atLeast: 0, atMost: 1 });

function openingOf(given: CharacteristicGiven): (x_v: SI, trace: Trace) => SI {
  switch (given.characteristic) {
    case "linear":
      return (x_v, trace) => trace.use(linearCharacteristic, { x_v }, "valve");
    case "quick-opening":
      return (x_v, trace) => trace.use(quickOpeningCharacteristic, { x_v }, "valve");
    case "equal-percentage": {
      const R_0 = accept("R_0", "The rangeability", given.R_0, { kind: "ratio", above: 1, atMost: 1000 });
      return (x_v, trace) => trace.use(equalPercentageCharacteristic, { x_v, R_0 }, "valve");
    }
    case "table":
      return openingOfTable(given.table ?? []);
  }
}

/** Parts of the travel and of the full flow by which lines of a table have to differ, to be lines of their own. */
const CLOSE = 1e-6;
/** In any unit that somebody reads, a position and a flow are larger than this. */
const TINY = 1e-6;

function endsOf({ characteristic, table = [] }: CharacteristicGiven): readonly [SI, SI] {
  if (characteristic !== "table") return [0, 1];
  const positions = table.map(([x]) => x);
  return [Math.min(...positions), Math.max(...positions)];
}

function openingOfTable(table: Points): (x_v: SI) => SI {
  const complain = (says: string) => new DomainError("table", says);
  if (table.length < 2)
    throw complain("A table needs two lines or more, each with a position and the flow there.");
  if (table.some((line) => !line.every(Number.isFinite)))
    throw complain("A line of the table lacks a number. Each needs a position and the flow there.");
  const rising = [...table].sort(([a], [b]) => a - b);
  const [first, last] = [rising[0], rising.at(-1)] as [Points[number], Points[number]];
  const span = last[0] - first[0];
  const after = (i: number) => rising[i - 1] as Points[number];
  if (rising.some(([x], i) => i > 0 && x - after(i)[0] <= CLOSE * span))
    throw complain("Two lines of the table have the same position, or all but. Each may stand there once.");
  if (first[1] < 0) throw complain("A flow in the table is below zero. It may be as low as zero.");
  if (rising.some(([, flow], i) => i > 0 && flow - after(i)[1] <= CLOSE * last[1]))
    throw complain("The flow has to rise from each position in the table to the next.");
  if (span < TINY || last[1] < TINY)
    throw complain("The numbers of the table are too small to count with. Give them in a smaller unit.");
  const curve = monotoneCurve(rising.map(([x, flow]) => [(x - first[0]) / span, flow / last[1]] as const));
  return curve;
}
