import { DomainError, type SI } from "../quantity/domain-error.ts";
import {
  acceptReadings,
  type Correlation,
  correlationRoot,
  type Measurand,
  type Measurands,
  type Reading,
  type Readings,
  type Values,
} from "./readings.ts";
import { slopes } from "./slopes.ts";

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

/**
 * The step of a central difference: small against the uncertainty, for a pinched difference, and large enough against the
 * reading for models that search.
 */
const stepFor = ({ value, u }: Reading): SI => Math.max(0.02 * u, 1e-6 * Math.abs(value)) || 1e-9;

/**
 * The uncertainty of one result from its slopes, which are those against each of the readings.
 *
 * Source: JCGM 100:2008, equations 10, 13 and G.2b; from memory.
 */
export function combine(
  y: SI,
  sensitivity: Readonly<Record<string, number>>,
  readings: Readings,
  correlations: readonly Correlation[],
): Propagated {
  const ids = Object.keys(readings);
  const part = (id: string): number => (sensitivity[id] as number) * (readings[id] as Reading).u;
  const own = ids.reduce((sum, id) => sum + part(id) ** 2, 0);
  const shared = correlations.reduce((sum, { a, b, r }) => sum + 2 * part(a) * part(b) * r, 0);
  const variance = Math.max(0, own + shared);
  const lost = Object.entries(readings).reduce(
    (sum, [id, { freedom }]) => sum + (freedom ? part(id) ** 4 / freedom : 0),
    0,
  );
  return {
    y,
    u: Math.sqrt(variance),
    sensitivity,
    share: Object.fromEntries(ids.map((id) => [id, variance > 0 ? part(id) ** 2 / variance : 0])),
    sharedShare: variance > 0 ? shared / variance : 0,
    freedom: lost > 0 ? variance ** 2 / lost : Number.POSITIVE_INFINITY,
  };
}

/** The slope of everything that follows against each reading, by the id of the reading, and what follows at the readings. */
export interface Sloped {
  readonly here: Values;
  readonly by: Readonly<Record<string, Values>>;
}

/**
 * All slopes in one pass: two runs of `f` a reading, whatever the number of results. Throws a DomainError for uncertainties
 * or correlations that cannot be, and where `f` has no value at the readings.
 */
export function slopesOfAll(
  f: Measurands,
  readings: Readings,
  correlations: readonly Correlation[] = [],
): Sloped {
  acceptReadings(readings, correlations);
  correlationRoot(Object.keys(readings), correlations);
  const at = Object.fromEntries(Object.entries(readings).map(([id, { value }]) => [id, value]));
  const here = f(at);
  const by = Object.entries(readings).map(
    ([id, reading]) => [id, slopes(f, at, id, stepFor(reading), here)] as const,
  );
  return { here, by: Object.fromEntries(by) };
}

/** The uncertainty of everything that has slopes: of what has none, or no value, it is left out. */
export function combineAll(
  { here, by }: Sloped,
  readings: Readings,
  correlations: readonly Correlation[] = [],
): Readonly<Record<string, Propagated>> {
  const found: Record<string, Propagated> = {};
  for (const [y, value] of Object.entries(here)) {
    const sensitivity = Object.fromEntries(Object.keys(readings).map((id) => [id, by[id]?.[y]]));
    const isTold = Object.values(sensitivity).every((c) => c !== undefined);
    if (value === undefined || !Number.isFinite(value) || !isTold) continue;
    found[y] = combine(value, sensitivity as Readonly<Record<string, number>>, readings, correlations);
  }
  return found;
}

/**
 * The uncertainty of what follows from readings, to first order with sensitivities at the readings. A reading with u = 0 is
 * exact and has a sensitivity too.
 *
 * Throws a DomainError for a negative uncertainty, at `correlation` for correlations that cannot be, where the measurand
 * has no value at the readings, and where one stands so close to what is impossible that no slope can be told.
 *
 * @example propagate(({ a, b }) => a * b, { a: { value: 2, u: 0.1 }, b: { value: 3, u: 0.1 } }).u // 0.3606
 */
export function propagate(
  f: Measurand,
  readings: Readings,
  correlations: readonly Correlation[] = [],
): Propagated {
  const sloped = slopesOfAll((x) => ({ y: f(x) }), readings, correlations);
  const edge = Object.entries(sloped.by).find(([, { y }]) => y === undefined);
  if (edge)
    throw new DomainError(
      edge[0],
      "This reading stands so close to what is impossible that no slope can be told.",
    );
  return combineAll(sloped, readings, correlations)["y"] as Propagated;
}
