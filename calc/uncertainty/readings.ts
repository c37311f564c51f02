import { refuse } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";

/**
 * How the error of a reading may fall. Within limits that are all alike it is rectangular, and triangular where the middle
 * is likelier.
 */
export type Spread = "normal" | "rectangular" | "triangular";

/** A reading and its standard uncertainty, both in SI. */
export interface Reading {
  readonly value: SI;
  readonly u: SI;
  /** Normal, unless this says otherwise. */
  readonly spread?: Spread;
  /** Degrees of freedom of u: the readings averaged less one. Without it u is taken as exactly known. */
  readonly freedom?: number;
}

export type Readings = Readonly<Record<string, Reading>>;

/** That the errors of two readings go together: both thermocouples sit on one reference junction. `r` is from −1 to 1. */
export interface Correlation {
  readonly a: string;
  readonly b: string;
  readonly r: number;
}

/** What follows from readings; may throw a DomainError where they have no meaning together. */
export type Measurand = (x: Readonly<Record<string, SI>>) => SI;

/** Several quantities by name; one that has no meaning is left out or undefined. */
export type Values = Readonly<Record<string, SI | undefined>>;

/** Everything that follows from readings at once; may throw a DomainError where they have no meaning together. */
export type Measurands = (x: Readonly<Record<string, SI>>) => Values;

/** Of a quantity that has no value at half of all draws or more. */
export const mostLost =
  "Most of what the readings may be has no result. Smaller uncertainties are needed, or readings farther from the impossible.";

/** Refuses uncertainties that are none. Throws a DomainError at the reading, or at `correlation`. */
export function acceptReadings(readings: Readings, correlations: readonly Correlation[]): void {
  for (const [id, { u, freedom }] of Object.entries(readings)) {
    refuse(!(u >= 0 && Number.isFinite(u)), id, "An uncertainty is zero or more.");
    refuse(freedom !== undefined && !(freedom > 0), id, "Degrees of freedom are more than zero.");
  }
  for (const { a, b, r } of correlations) {
    refuse(!(Math.abs(r) <= 1), "correlation", "A correlation lies between −1 and 1.");
    refuse(
      a === b || !(a in readings) || !(b in readings),
      "correlation",
      "A correlation stands between two of the readings.",
    );
  }
}

/** The lower triangle L with L·Lᵀ the correlations of the readings, in their order. Throws where they contradict. */
export function correlationRoot(
  ids: readonly string[],
  correlations: readonly Correlation[],
): readonly (readonly number[])[] {
  const r = ids.map((a) =>
    ids.map((b) => {
      if (a === b) return 1;
      return correlations.find((c) => (c.a === a && c.b === b) || (c.a === b && c.b === a))?.r ?? 0;
    }),
  );
  const root: number[][] = [];
  for (const [i, row] of r.entries()) {
    const own: number[] = [];
    for (let j = 0; j <= i; j += 1) {
      const other = j === i ? own : (root[j] as number[]);
      const shared = own.reduce((sum, x, k) => sum + x * (other[k] ?? 0), 0);
      const left = (row[j] as number) - shared;
      if (j < i) {
        const diagonal = other[j] as number;
        refuse(diagonal < 1e-7 && Math.abs(left) > 1e-9, "correlation", contradiction);
        own.push(diagonal < 1e-7 ? 0 : left / diagonal);
      } else {
        refuse(left < -1e-9, "correlation", contradiction);
        own.push(Math.sqrt(Math.max(0, left)));
      }
    }
    root.push(own);
  }
  return root;
}

const contradiction = "These correlations contradict each other: no errors can go together in this way.";
