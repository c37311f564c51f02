import { DomainError, type SI } from "../quantity/domain-error.ts";
import {
  acceptReadings,
  type Correlation,
  correlationRoot,
  type Measurand,
  type Readings,
} from "./readings.ts";

export interface Propagated {
  readonly y: SI;
  /** Combined standard uncertainty of y. */
  readonly u: SI;
  /** dy by d of each reading. */
  readonly sensitivity: Readonly<Record<string, number>>;
  /** The part of u² that each reading brings alone. They sum to 1 where nothing is correlated. */
  readonly share: Readonly<Record<string, number>>;
  /** The part of u² that correlations bring; negative where errors cancel. */
  readonly sharedShare: number;
  /** Effective degrees of freedom by the Welch–Satterthwaite formula; infinite where every u is exactly known. */
  readonly freedom: number;
}

/** A step of a central difference in standard uncertainties: small enough for a pinched difference, large enough for solvers. */
const STEP = 1e-3;

/**
 * The slope of the measurand against one reading at the readings, by a central difference over `step`; at the edge of what
 * is possible, by one of three points to the side that is.
 */
export function slope(f: Measurand, at: Readonly<Record<string, SI>>, id: string, step: SI): number {
  const shifted = (by: number): SI | undefined => {
    try {
      return f({ ...at, [id]: (at[id] as SI) + by * step });
    } catch (error) {
      if (error instanceof DomainError) return undefined;
      throw error;
    }
  };
  const [above, below] = [shifted(1), shifted(-1)];
  if (above !== undefined && below !== undefined) return (above - below) / (2 * step);
  const side = above !== undefined ? 1 : -1;
  const [near, far] = [above ?? below, shifted(2 * side)];
  if (near === undefined || far === undefined)
    throw new DomainError(
      id,
      "This reading stands so close to what is impossible that no slope can be told.",
    );
  return (side * (4 * near - far - 3 * f(at))) / (2 * step);
}

/**
 * The uncertainty of what follows from readings, to first order with sensitivities at the readings. A reading with u = 0 is
 * exact and has a sensitivity too.
 *
 * Throws a DomainError for a negative uncertainty, at `correlation` for correlations that cannot be, and where the measurand
 * has no value at the readings.
 *
 * Source: JCGM 100:2008, equations 10, 13 and G.2b; from memory.
 *
 * @example propagate(({ a, b }) => a * b, { a: { value: 2, u: 0.1 }, b: { value: 3, u: 0.1 } }).u // 0.3606
 */
export function propagate(
  f: Measurand,
  readings: Readings,
  correlations: readonly Correlation[] = [],
): Propagated {
  acceptReadings(readings, correlations);
  const ids = Object.keys(readings);
  correlationRoot(ids, correlations);
  const at = Object.fromEntries(Object.entries(readings).map(([id, { value }]) => [id, value]));
  const y = f(at);
  const sensitivity: Record<string, number> = {};
  const parts: Record<string, number> = {};
  for (const [id, { value, u }] of Object.entries(readings)) {
    const c = slope(f, at, id, u > 0 ? STEP * u : 1e-6 * Math.max(Math.abs(value), 1e-3));
    sensitivity[id] = c;
    parts[id] = c * u;
  }
  const own = ids.reduce((sum, id) => sum + (parts[id] as number) ** 2, 0);
  const shared = correlations.reduce(
    (sum, { a, b, r }) => sum + 2 * (parts[a] as number) * (parts[b] as number) * r,
    0,
  );
  const variance = Math.max(0, own + shared);
  const share = Object.fromEntries(
    ids.map((id) => [id, variance > 0 ? (parts[id] as number) ** 2 / variance : 0]),
  );
  const lost = Object.entries(readings).reduce(
    (sum, [id, { freedom }]) => sum + (freedom ? (parts[id] as number) ** 4 / freedom : 0),
    0,
  );
  return {
    y,
    u: Math.sqrt(variance),
    sensitivity,
    share,
    sharedShare: variance > 0 ? shared / variance : 0,
    freedom: lost > 0 ? variance ** 2 / lost : Number.POSITIVE_INFINITY,
  };
}
