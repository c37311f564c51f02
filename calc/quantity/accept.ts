import { DomainError, type Limit, type SI } from "./domain-error.ts";
import type { Kind } from "./kinds.ts";

/** Bounds of what is accepted. `above` and `below` leave the bound itself out. */
export interface Bounds {
  readonly kind: Kind;
  readonly above?: SI;
  readonly atLeast?: SI;
  readonly atMost?: SI;
  readonly below?: SI;
}

/** What a conversion of units may leave of a bound that was typed as it is printed. */
export const lastBits = (bound: SI): SI => 1e-12 * Math.abs(bound);

/** Throws a DomainError for `field` when `wrong` holds. */
export function refuse(wrong: boolean, field: string, message: string, limit?: Limit): void {
  if (wrong) throw new DomainError(field, message, limit);
}

/**
 * The value, when it is a number within the bounds; otherwise a DomainError that names the field and the bound.
 * `what` begins the sentence: "The pressure ratio".
 */
export function accept(field: string, what: string, value: SI | undefined, bounds: Bounds): SI {
  if (value === undefined || !Number.isFinite(value)) {
    throw new DomainError(field, `${what} is missing. A number is needed here.`);
  }
  const { kind, above, atLeast, atMost, below } = bounds;
  const limit = (bound: SI): Limit => ({ value: bound, kind });
  if (above !== undefined && value <= above) {
    throw new DomainError(field, `${what} is too low. It has to be above the bound.`, limit(above));
  }
  if (atLeast !== undefined && value < atLeast - lastBits(atLeast)) {
    throw new DomainError(field, `${what} is too low. It may be as low as the bound.`, limit(atLeast));
  }
  if (atMost !== undefined && value > atMost + lastBits(atMost)) {
    throw new DomainError(field, `${what} is too high. It may be as high as the bound.`, limit(atMost));
  }
  if (below !== undefined && value >= below) {
    throw new DomainError(field, `${what} is too high. It has to be below the bound.`, limit(below));
  }
  return value;
}
