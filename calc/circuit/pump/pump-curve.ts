import { parabolaFit } from "../../numerics/parabola-fit.ts";
import type { Points } from "../../numerics/straight-lines.ts";
import { accept } from "../../quantity/accept.ts";
import { DomainError, type SI } from "../../quantity/domain-error.ts";
import { plain, type Trace } from "../../relation/trace.ts";
import { affinityFlow } from "./affinity-flow.ts";
import { affinityHead } from "./affinity-head.ts";
import { pumpHead } from "./pump-head.ts";

/**
 * Three or more points of a pump's curve, flow in m³/s and head in m, at the speed `n_ref`; and the speed at which it runs,
 * rev/s, where that is another.
 */
export interface PumpGiven {
  readonly points: Points;
  readonly n?: SI | undefined;
  readonly n_ref?: SI | undefined;
}

/**
 * The parabola through the points, and what it misses them by, root of the mean square in m. `most` is the flow at which no
 * head is left, `span` the flows that the points cover, at the speed of the pump.
 */
export interface PumpCurve {
  readonly h_P0: SI;
  readonly h_P1: SI;
  readonly h_P2: SI;
  readonly V_ref: SI;
  readonly rms: SI;
  readonly most: SI;
  readonly span: readonly [SI, SI];
  head(V_w: SI, trace?: Trace): SI;
}

/** Part of the largest flow by which points have to differ, to be points of their own. */
const CLOSE = 1e-3;
/** What a fit leaves of a term that is not there, as part of the head at no flow. */
const ROUNDING = 1e-12;
/** Flow in m³/s and head in m below which there is no pump, and the part of the largest head that has to be left at no flow. */
const NO_PUMP = { V: 1e-9, h: 1e-3, part: 1e-6 } as const;

/**
 * A pump by least squares through its points, moved to its speed by the rules of similarity. Throws a DomainError that names
 * points, n or n_ref, also where the points make no curve that falls to nothing.
 *
 * @example pumpCurve({ points: [[0, 30], [10 / 3600, 29], [20 / 3600, 26]] }).head(9 / 3600) // 29.19 m
 */
export function pumpCurve({ points, n, n_ref }: PumpGiven): PumpCurve {
  const complain = (says: string) => new DomainError("points", says);
  if (points.some(([V, h]) => !Number.isFinite(V) || !Number.isFinite(h)))
    throw complain("A point of the pump lacks a number. Each needs a flow and the head there.");
  if (points.some(([V, h]) => V < 0 || h < 0))
    throw complain("A point of the pump is below zero. Flow and head may be as low as zero.");
  const V_ref = Math.max(...points.map(([V]) => V));
  const apart = new Set(points.map(([V]) => Math.round(V / (CLOSE * V_ref))));
  if (!(apart.size >= 3)) throw complain("A pump needs three points or more, each at a flow of its own.");
  const least = { flow: 1e-9, head: 1e-3 };
  if (V_ref < least.flow)
    throw new DomainError("points", "No point of the pump has a flow as large as the bound.", {
      value: least.flow,
      kind: "liquidFlow",
    });
  if (!points.some(([, h]) => h >= least.head))
    throw new DomainError("points", "No point of the pump has a head as high as the bound.", {
      value: least.head,
      kind: "head",
    });
  if (points.some(([V, h]) => V > 10 || h > 5000))
    throw complain("A point of the pump is past 10 m³/s or 5000 m. No pump for a cooler is so large.");
  const h_most = Math.max(...points.map(([, h]) => h));
  if (V_ref < NO_PUMP.V || h_most < NO_PUMP.h)
    throw complain("No pump has so little flow or head as there is in these points. Check their units.");
  const { constant, linear, square, rms } = parabolaFit(points.map(([V, h]) => [V / V_ref, h] as const));
  const whole = (term: number) => (Math.abs(term) < ROUNDING * constant ? 0 : -term);
  const fit = { h_P0: constant, h_P1: whole(linear), h_P2: whole(square) };
  const end = constant > NO_PUMP.part * h_most ? firstZero(constant, linear, square) : undefined;
  if (end === undefined)
    throw complain(
      "Through these points goes no curve that starts above zero and falls to it, as that of a pump does. Check flows and heads.",
    );

  const isOther = n !== undefined || n_ref !== undefined;
  const speed = { kind: "rotationalSpeed", atLeast: 0.01, atMost: 2000 } as const;
  const own = isOther ? accept("n", "The speed of the pump", n, speed) : 1;
  const ref = isOther ? accept("n_ref", "The speed that the points belong to", n_ref, speed) : 1;
  const head = (V_w: SI, trace: Trace = plain) => {
    if (!isOther) return trace.use(pumpHead, { ...fit, V_w, V_ref }, "pump");
    const at = trace.use(affinityFlow, { V_ref: V_w, n: ref, n_ref: own }, "flow at the speed of the points");
    const h_ref = trace.use(pumpHead, { ...fit, V_w: at, V_ref }, "pump at the speed of the points");
    return trace.use(affinityHead, { h_ref, n: own, n_ref: ref }, "pump");
  };
  const scale = own / ref;
  const first = Math.min(...points.map(([V]) => V));
  return {
    ...fit,
    V_ref,
    rms,
    most: scale * end * V_ref,
    span: [scale * first, scale * V_ref],
    head,
  };
}

/** The first x above 0 at which c + b x + a x² comes down to zero, for a c above 0. */
function firstZero(c: number, b: number, a: number): number | undefined {
  const inside = b * b - 4 * a * c;
  if (inside < 0) return undefined;
  // The root in the form that keeps its figures where the square is small; with a < 0 the other one lies below zero.
  const x = (2 * c) / (-b + Math.sqrt(inside));
  return x > 0 && Number.isFinite(x) ? x : undefined;
}
