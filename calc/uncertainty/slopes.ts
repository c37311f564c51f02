import { DomainError, type SI } from "../quantity/domain-error.ts";
import type { Measurands, Values } from "./readings.ts";

/** What follows from readings, or undefined where they have no meaning together. */
export function valuesAt(f: Measurands, x: Readonly<Record<string, SI>>): Values | undefined {
  try {
    return f(x);
  } catch (error) {
    if (error instanceof DomainError) return undefined;
    throw error;
  }
}

const finite = (values: Values | undefined, id: string): SI | undefined => {
  const value = values?.[id];
  return value !== undefined && Number.isFinite(value) ? value : undefined;
};

/**
 * The slope of everything that follows against one reading, at the readings: by a central difference over `step`; at the edge
 * of what is possible, by one of three points to the side that is. A slope that cannot be told is left out. `here` is what
 * follows at the readings themselves.
 */
export function slopes(
  f: Measurands,
  at: Readonly<Record<string, SI>>,
  id: string,
  step: SI,
  here: Values,
): Values {
  const shifted = (by: number) => valuesAt(f, { ...at, [id]: (at[id] as SI) + by * step });
  const [above, below] = [shifted(1), shifted(-1)];
  const farther = new Map<number, Values | undefined>();
  const slopeOf = (y: string): number | undefined => {
    const [up, down] = [finite(above, y), finite(below, y)];
    if (up !== undefined && down !== undefined) return (up - down) / (2 * step);
    const side = up !== undefined ? 1 : -1;
    if (!farther.has(side)) farther.set(side, shifted(2 * side));
    const [near, far, middle] = [up ?? down, finite(farther.get(side), y), finite(here, y)];
    if (near === undefined || far === undefined || middle === undefined) return undefined;
    return (side * (4 * near - far - 3 * middle)) / (2 * step);
  };
  return Object.fromEntries(Object.keys(here).map((y) => [y, slopeOf(y)]));
}
