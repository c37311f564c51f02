import { leastSquares, solveLinear } from "../numerics/least-squares.ts";
import { refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import { conductanceAtFlow } from "./conductance-at-flow.ts";
import { conductanceOfResistances } from "./conductance-of-resistances.ts";

/** A measured conductance, W/K, at flows in kg/s. */
export interface ConductancePoint {
  readonly m_a: SI;
  readonly m_w: SI;
  readonly UA: SI;
}

/** K/W of all but the water, W/K of the water side at the reference flow, and how far the points lie off, as a part of UA. */
export interface WaterSideFit {
  readonly R_rest: SI;
  readonly UA_w_ref: SI;
  readonly deviation: SI;
}

/** W/K at the reference flows, the powers of the flows, and how far the points lie off, as a part of UA. */
export interface BothSidesFit {
  readonly UA_a_ref: SI;
  readonly n_a: SI;
  readonly UA_w_ref: SI;
  readonly n_w: SI;
  readonly deviation: SI;
}

/** Flows that differ by less than this part are one flow. */
const SAME_FLOW = 0.01;
const TOLERANCE = 1e-10;
/** Common practice, no source: where fins and turbulent water usually are. */
const USUAL = { n_a: 0.6, n_w: 0.75 };

const spanOf = (flows: readonly SI[]): SI => Math.max(...flows) / Math.min(...flows) - 1;

/** How many flows differ from each other. */
function levels(flows: readonly SI[]): number {
  const rising = [...flows].sort((a, b) => a - b);
  let count = 0;
  let last = 0;
  for (const flow of rising)
    if (flow > last * (1 + SAME_FLOW)) {
      count += 1;
      last = flow;
    }
  return count;
}

const rootMeanSquare = (parts: readonly number[]): number =>
  Math.sqrt(parts.reduce((sum, part) => sum + part * part, 0) / parts.length);

function acceptPoints(points: readonly ConductancePoint[], least: number): void {
  refuse(
    points.length < least,
    "points",
    `There are too few points for what is sought. At least ${least} are needed.`,
  );
  for (const { m_a, m_w, UA } of points)
    refuse(
      !(m_a > 0 && m_w > 0 && UA > 0),
      "points",
      "A point has no flow or no conductance. Each number has to be above zero.",
    );
}

/**
 * The line of Wilson: at one air flow, all of the resistance that does not move with the water, and the conductance of the water
 * side at a reference flow in kg/s, where the power of its flow is known. Least squares of the parts by which the points lie off.
 *
 * Throws a DomainError naming `points` for fewer than two water flows, for air that was not steady, and for points that make one
 * of both resistances negative.
 *
 * @example
 * fitWaterSide([{ m_a: 0.3, m_w: 0.5, UA: 400 }, { m_a: 0.3, m_w: 1, UA: 500 }], { n_w: 0.8, m_w_ref: 1 }).UA_w_ref // 1482 W/K
 */
export function fitWaterSide(
  points: readonly ConductancePoint[],
  { n_w, m_w_ref }: { readonly n_w: SI; readonly m_w_ref: SI },
): WaterSideFit {
  acceptPoints(points, 2);
  refuse(
    spanOf(points.map(({ m_a }) => m_a)) > SAME_FLOW,
    "points",
    "The air flow is not the same at all points, so that the line would show the air as well. Give points of one air flow.",
  );
  refuse(
    spanOf(points.map(({ m_w }) => m_w)) < SAME_FLOW,
    "points",
    "All points have the same water flow, which shows nothing of the water side. Give points of different water flows.",
  );
  const rows = points.map(({ m_w, UA }) => [UA, UA * (m_w / m_w_ref) ** -n_w] as const);
  const sum = (of: (row: readonly [number, number]) => number) => rows.reduce((all, row) => all + of(row), 0);
  const mixed = sum(([a, b]) => a * b);
  const [R_rest = Number.NaN, R_water = Number.NaN] = solveLinear(
    [
      [sum(([a]) => a * a), mixed],
      [mixed, sum(([, b]) => b * b)],
    ],
    [sum(([a]) => a), sum(([, b]) => b)],
  );
  refuse(
    !(R_rest > 0 && R_water > 0),
    "points",
    "The points give one side a resistance below zero: a reading is wrong, or the power of the water flow is. Look at the points and the power.",
  );
  const deviation = rootMeanSquare(rows.map(([a, b]) => a * R_rest + b * R_water - 1));
  return { R_rest, UA_w_ref: 1 / R_water, deviation };
}

/**
 * Both sides from points at which both flows were changed: their conductances at reference flows in kg/s and the powers of the flows,
 * where the resistance of wall and dirt in K/W is known. Least squares of the parts by which the points lie off.
 *
 * Throws a DomainError naming `points` for fewer than four, where one of the flows never changed, where neither took three values,
 * and where no such powers describe the points.
 *
 * @example
 * fitBothSides(
 *   [[0.1, 0.5, 267.216], [0.2, 0.5, 361.638], [0.4, 0.5, 471.576], [0.1, 1, 296.582], [0.4, 1, 571.429], [0.2, 2, 458.333]].map(
 *     ([m_a = 0, m_w = 0, UA = 0]) => ({ m_a, m_w, UA }),
 *   ),
 *   { R_wall: 0, m_a_ref: 0.4, m_w_ref: 1 },
 * ).n_a // 0.600
 */
export function fitBothSides(
  points: readonly ConductancePoint[],
  { R_wall, m_a_ref, m_w_ref }: { readonly R_wall: SI; readonly m_a_ref: SI; readonly m_w_ref: SI },
): BothSidesFit {
  acceptPoints(points, 4);
  for (const [what, flows] of [
    ["air", points.map(({ m_a }) => m_a)],
    ["water", points.map(({ m_w }) => m_w)],
  ] as const)
    refuse(
      spanOf(flows) < SAME_FLOW,
      "points",
      `All points have the same ${what} flow, which shows nothing of how that side moves. Give points of different ${what} flows.`,
    );
  // With two flows on each side what one gives off the other may take: the sum of both resistances stays the same.
  refuse(
    Math.max(levels(points.map(({ m_a }) => m_a)), levels(points.map(({ m_w }) => m_w))) < 3,
    "points",
    "With two flows of each side both sides cannot be told apart. Give points of at least three different flows of one side.",
  );
  const off = ([ln_a = 0, n_a = 0, ln_w = 0, n_w = 0]: readonly number[]) =>
    points.map(({ m_a, m_w, UA }) => {
      const UA_a = conductanceAtFlow.compute({ UA_ref: Math.exp(ln_a), m: m_a, m_ref: m_a_ref, n_h: n_a });
      const UA_film = conductanceAtFlow.compute({ UA_ref: Math.exp(ln_w), m: m_w, m_ref: m_w_ref, n_h: n_w });
      return conductanceOfResistances.compute({ UA_a, R_wall, R_foul: 0, UA_film }) / UA - 1;
    });
  const middle = Math.log(2 * Math.max(...points.map(({ UA }) => UA)));
  const found = searched(off, [middle, USUAL.n_a, middle, USUAL.n_w]);
  const [ln_a = 0, n_a = 0, ln_w = 0, n_w = 0] = found;
  const deviation = rootMeanSquare(off(found));
  refuse(
    !(n_a > 0 && n_w > 0 && n_a < 1.5 && n_w < 1.5 && Number.isFinite(Math.exp(ln_a + ln_w))),
    "points",
    "No powers of the flows describe these points: they are too near to each other, or a reading is wrong. Powers between 0 and 1.5 are sought.",
  );
  return { UA_a_ref: Math.exp(ln_a), n_a, UA_w_ref: Math.exp(ln_w), n_w, deviation };
}

function searched(off: (at: readonly number[]) => readonly number[], start: readonly number[]) {
  try {
    return leastSquares(off, start, { tolerance: TOLERANCE });
  } catch {
    throw new DomainError(
      "points",
      "The points do not show both sides apart: they are too near to each other. Give points over wider flows.",
    );
  }
}
