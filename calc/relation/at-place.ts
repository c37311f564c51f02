import type { Trace } from "./trace.ts";

/**
 * The same trace for one of several places that a model computes alike: each step says which place it belongs to, and a note on one
 * of the place's results is about that result's own id, by `about`.
 */
export const atPlace = (
  trace: Trace,
  place: string,
  about: Readonly<Record<string, string>> = {},
): Trace => ({
  use: (relation, inputs, where) => trace.use(relation, inputs, `${where}, ${place}`),
  note: (note) => trace.note({ ...note, about: about[note.about] ?? note.about }),
});
