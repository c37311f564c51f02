import { gaussLegendre } from "../numerics/gauss-legendre.ts";
import { accept, refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import { type WaterCircuitGiven, waterCircuit } from "./water-circuit.ts";

/** A tank of constant area in m² whose water falls from one height to another above the outlet, m, through a circuit. */
export interface DrainTimeGiven {
  readonly A?: SI | undefined;
  readonly h_from?: SI | undefined;
  readonly h_to?: SI | undefined;
  readonly circuit: Omit<WaterCircuitGiven, "source" | "wanted" | "points" | "h_z" | "h_w">;
}

/** m³/s when full and at the end, and the time in s. */
export interface DrainTime {
  readonly V_from: SI;
  readonly V_to: SI;
  readonly t: SI;
}

/** Over the root of the height the flow is nearly a straight line, so that few points are plenty. */
const POINTS = 12;

/**
 * How long a tank feeds a circuit while its level falls, with the flow at each level that of the circuit. The position of
 * the valve stays. Throws a DomainError for heights that are no fall, and for a valve that is shut.
 *
 * Source: conservation of mass, integrated by Gauss's rule, derived here.
 *
 * @example
 * drainTime({ A: 1, h_from: 4, h_to: 1, circuit: { liquid: "water", T_w: 298.15, x_v: 1, K_vs: 25 / 3600,
 *   characteristic: "linear", pipe: { L: 0, d: 0.05, k_s: 0, K: 0 }, core: { Delta_p_ref: 0, V_ref: 1, n_p: 2 } } }).t // 920.1 s
 */
export const drainTime: Model<DrainTimeGiven, DrainTime> = ({ A, h_from, h_to, circuit }, trace = plain) => {
  const area = accept("A", "The area of the tank", A, { kind: "area", atLeast: 1e-6, atMost: 1e5 });
  const from = accept("h_from", "The height of the water at first", h_from, {
    kind: "head",
    atLeast: 1e-3,
    atMost: 2000,
  });
  const to = accept("h_to", "The height of the water at the end", h_to, {
    kind: "head",
    atLeast: 0.01,
    below: from,
  });
  const flowAt = (h_w: SI, through = plain) =>
    waterCircuit({ ...circuit, source: "head", h_w, wanted: "flow" }, through).V_w;
  const V_from = flowAt(from, trace);
  const [u_from, u_to] = [Math.sqrt(from), Math.sqrt(to)];
  const { nodes, weights } = gaussLegendre(POINTS);
  let t = 0;
  for (let i = 0; i < POINTS; i++) {
    const u = u_to + (u_from - u_to) * (nodes[i] as number);
    t += ((weights[i] as number) * (u_from - u_to) * area * 2 * u) / flowAt(u * u);
  }
  refuse(
    !Number.isFinite(t),
    "x_v",
    "So little passes the valve that the tank is never down. It has to be opened further.",
  );
  return { V_from, V_to: flowAt(to), t };
};
