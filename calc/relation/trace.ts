import type { Limit, SI } from "../quantity/domain-error.ts";
import type { AnyRelation, Relation } from "./relation.ts";

/** One use of a relation: `where` says in words which place of the path the local symbols stand for. */
export interface Step {
  readonly relation: string;
  readonly where: string;
  readonly inputs: Readonly<Record<string, SI>>;
  readonly value: SI;
}

/** A remark on a result that stays valid: about which input or result, and the bound that it passed. */
export interface Note {
  readonly about: string;
  readonly says: string;
  readonly limit?: Limit;
}

/** What a model computes through: it evaluates relations, and may record them. */
export interface Trace {
  use<In extends string>(relation: Relation<In>, inputs: Readonly<Record<In, SI>>, where: string): SI;
  note(note: Note): void;
}

/** Computes and records nothing: for solvers and sweeps. */
export const plain: Trace = { use: (relation, inputs) => relation.compute(inputs), note: () => {} };

export interface Recording extends Trace {
  readonly steps: readonly Step[];
  /** Those of the steps, by id. */
  readonly relations: ReadonlyMap<string, AnyRelation>;
  readonly notes: readonly Note[];
}

/**
 * Computes the same numbers as `plain`, and keeps every step, every note, and a note for each range left. What was said
 * of the same thing already is not said again.
 */
export function recording(): Recording {
  const steps: Step[] = [];
  const relations = new Map<string, AnyRelation>();
  const notes: Note[] = [];
  const note = (one: Note) => {
    const isSaid = notes.some(
      ({ about, says, limit }) =>
        about === one.about && says === one.says && limit?.value === one.limit?.value,
    );
    if (!isSaid) notes.push(one);
  };
  return {
    steps,
    relations,
    notes,
    note,
    use: (relation, inputs, where) => {
      const value = relation.compute(inputs);
      steps.push({ relation: relation.id, where, inputs, value });
      relations.set(relation.id, relation);
      for (const range of relation.ranges ?? []) {
        const x = (inputs as Readonly<Record<string, SI>>)[range.input];
        if (x === undefined || (x >= range.from && x <= range.to)) continue;
        const quantity = (relation.inputs as Readonly<Record<string, { kind: Limit["kind"] }>>)[range.input];
        const value = x < range.from ? range.from : range.to;
        note({ about: where, says: range.says, ...(quantity && { limit: { value, kind: quantity.kind } }) });
      }
      return value;
    },
  };
}

/** A model: a pure function of what is given, computing through relations. Lives in calc/. */
export type Model<I, O> = (given: Readonly<I>, trace?: Trace) => O;
