import type { Kind } from "./kinds.ts";

/** A number in the SI unit of its kind. Kinds are declared beside a number, never wrapped around it. */
export type SI = number;

/** The bound that a refused value ran into. */
export interface Limit {
  readonly value: SI;
  readonly kind: Kind;
}

/**
 * Impossible input.
 *
 * `field` names the input that has to change, by its key. `message` is a whole sentence for a person: what is wrong and
 * what is accepted. `limit`, where there is one, is the bound that binds; writers of messages leave the bound's number
 * out of the sentence and put it in `limit`, so that it is shown in the reader's own unit.
 */
export class DomainError extends Error {
  override readonly name = "DomainError";
  readonly field: string;
  readonly limit: Limit | undefined;

  constructor(field: string, message: string, limit?: Limit) {
    super(message);
    this.field = field;
    this.limit = limit;
  }
}
