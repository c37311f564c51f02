import type { Trace } from "./trace.ts";

/**
 * The same trace for one of several places that a model computes alike: each step says which place it belongs to, and a note on one
 * of the place's results is about that result's own id, by `about`. Steps that `isSaid` picks out are computed and not recorded:
 * another place has the same, or nobody asks.
 */
export const atPlace = (
  trace: Trace,
  place: string,
  about: Readonly<Record<string, string>> = {},
  isSaid: (where: string) => boolean = () => false,
): Trace => ({
  use: (relation, inputs, where) =>
    isSaid(where) ? relation.compute(inputs) : trace.use(relation, inputs, `${where}, ${place}`),
  note: (note) => trace.note({ ...note, about: about[note.about] ?? note.about }),
});
