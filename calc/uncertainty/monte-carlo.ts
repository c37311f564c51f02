import { refuse } from "../quantity/accept.ts";
import { DomainError, type SI } from "../quantity/domain-error.ts";
import {
  acceptReadings,
  type Correlation,
  correlationRoot,
  type Measurand,
  type Measurands,
  mostLost,
  type Readings,
  type Spread,
} from "./readings.ts";
import { valuesAt } from "./slopes.ts";

export interface Simulated {
  readonly mean: SI;
  /** Standard deviation of the draws. */
  readonly u: SI;
  /** The middle 95 % of the draws lie between these. */
  readonly low: SI;
  readonly high: SI;
  /** Draws that have a value, in ascending order. */
  readonly values: Float64Array;
  /** Draws at which the measurand has no value. */
  readonly lost: number;
}

export interface Draws {
  readonly count: number;
  /** Numbers from 0 up to and without 1; the same ones give the same draws. */
  readonly uniform: () => number;
}

/** Errors of standard deviation one, from numbers that are uniform between 0 and 1. */
const spreads: Readonly<Record<Spread, (uniform: () => number) => number>> = {
  // Box and Muller, 1958; from memory. The logarithm never sees a zero.
  normal: (uniform) => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  rectangular: (uniform) => Math.sqrt(3) * (2 * uniform() - 1),
  triangular: (uniform) => Math.sqrt(6) * (uniform() + uniform() - 1),
};

/** So many draws are made before the work is handed back to whoever shows how far it is. */
const BATCH = 100;

/** The value below which the part `p` of sorted numbers lies, between the two nearest. */
function quantile(sorted: Float64Array, p: number): number {
  const at = p * (sorted.length - 1);
  const below = sorted[Math.floor(at)] as number;
  const above = sorted[Math.ceil(at)] as number;
  return below + (at - Math.floor(at)) * (above - below);
}

/** Draws of readings whose errors go together as declared, each a fresh record. Throws a DomainError where they cannot. */
function drawer(
  readings: Readings,
  correlations: readonly Correlation[],
  uniform: () => number,
): () => Readonly<Record<string, SI>> {
  acceptReadings(readings, correlations);
  const ids = Object.keys(readings);
  const root = correlationRoot(ids, correlations);
  for (const { a, b, r } of correlations)
    for (const id of [a, b])
      refuse(
        r !== 0 && (readings[id]?.spread ?? "normal") !== "normal",
        "correlation",
        "Only errors that are spread normally can be drawn together.",
      );
  const errors = new Array<number>(ids.length).fill(0);
  return () => {
    const x: Record<string, SI> = {};
    for (const [i, id] of ids.entries()) errors[i] = spreads[readings[id]?.spread ?? "normal"](uniform);
    for (const [i, id] of ids.entries()) {
      const { value, u } = readings[id] as Readings[string];
      const row = root[i] as readonly number[];
      x[id] = value + u * row.reduce((sum, l, k) => sum + l * (errors[k] as number), 0);
    }
    return x;
  };
}

/** What draws come to, of which `count` were made. At least two of them have to have a value. */
function summary(found: readonly number[], count: number): Simulated {
  const values = Float64Array.from(found).sort();
  const mean = values.reduce((sum, y) => sum + y, 0) / values.length;
  const squares = values.reduce((sum, y) => sum + (y - mean) ** 2, 0);
  return {
    mean,
    u: Math.sqrt(squares / (values.length - 1)),
    low: quantile(values, 0.025),
    high: quantile(values, 0.975),
    values,
    lost: count - values.length,
  };
}

/**
 * The spread of everything that follows from readings, by draws from the spreads of the readings. Yields the number of draws
 * made, a batch at a time, and returns what they come to; a quantity that has no value at half of the draws or more is left
 * out.
 *
 * Correlated readings have to be normal. Throws a DomainError where they are not, and for uncertainties or correlations that
 * cannot be.
 *
 * Source: JCGM 101:2008, clauses 6 and 7.7, probabilistically symmetric interval; from memory.
 */
export function* monteCarloOfAll(
  f: Measurands,
  readings: Readings,
  correlations: readonly Correlation[],
  { count, uniform }: Draws,
): Generator<number, Readonly<Record<string, Simulated>>, void> {
  const draw = drawer(readings, correlations, uniform);
  const found: Record<string, number[]> = {};
  for (let drawn = 0; drawn < count; ) {
    for (const end = Math.min(count, drawn + BATCH); drawn < end; drawn += 1) {
      const values = valuesAt(f, draw());
      for (const id in values) {
        const y = values[id];
        if (y === undefined || !Number.isFinite(y)) continue;
        found[id] ??= [];
        found[id].push(y);
      }
    }
    yield drawn;
  }
  const told = Object.entries(found).filter(([, values]) => values.length >= Math.max(2, count / 2));
  return Object.fromEntries(told.map(([id, values]) => [id, summary(values, count)]));
}

/**
 * The spread of one quantity by draws: see `monteCarloOfAll`. Throws a DomainError where fewer than half of the draws have a
 * value.
 */
export function* monteCarlo(
  f: Measurand,
  readings: Readings,
  correlations: readonly Correlation[],
  draws: Draws,
): Generator<number, Simulated, void> {
  const { y } = yield* monteCarloOfAll((x) => ({ y: f(x) }), readings, correlations, draws);
  if (!y) throw new DomainError("readings", mostLost);
  return y;
}
