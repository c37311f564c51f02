import type { Model, Trace } from "../../calc/relation/trace.ts";
import type { Value } from "./check.ts";

/** The inputs of one case, under the names of its file. */
export type Given = Readonly<Record<string, number | string>>;

/**
 * What a check file without a `relation` of its own is held against: it computes the file's outputs from the file's
 * inputs, in the file's SI units. It goes through `trace`, so that the relations it exercises are recorded.
 */
export interface Subject {
  compute(given: Given, trace: Trace): Readonly<Record<string, Value>>;
}

/** A subject from its function. A name that the cases lack arrives as undefined and fails the check. */
export const subject = <In extends Given>(
  compute: (given: In, trace: Trace) => Readonly<Record<string, Value>>,
): Subject => ({ compute: (given, trace) => compute(given as In, trace) });

/** A model as a subject: the cases use the model's own names, and null where it leaves a result out. */
export const modelSubject = <In>(model: Model<In, object>): Subject => ({
  compute: (given, trace) =>
    Object.fromEntries(
      Object.entries<Value | undefined>({ ...model(given as unknown as In, trace) }).map(([name, value]) => [
        name,
        value ?? null,
      ]),
    ),
});
