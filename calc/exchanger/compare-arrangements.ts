import { accept } from "../quantity/accept.ts";
import type { SI } from "../quantity/domain-error.ts";
import { type Model, plain } from "../relation/trace.ts";
import { arrangementOf, arrangements } from "./arrangements.ts";
import { counterflow } from "./effectiveness/counterflow.ts";
import { onSmallerStream, type SmallerStream } from "./smaller-stream.ts";

/** One size and one ratio for all, and the id of the arrangement looked at. */
export interface CompareGiven {
  readonly arrangement: string;
  readonly NTU?: SI | undefined;
  readonly R?: SI | undefined;
}

/** `all` holds P of every arrangement by its id. */
export interface Compared extends SmallerStream {
  readonly P: SI;
  readonly P_best: SI;
  readonly P_swapped: SI | undefined;
  readonly all: Readonly<Record<string, SI>>;
}

/** More than any cooler has. */
const LARGEST_NTU = 50;
const LARGEST_R = 20;

/**
 * The effectiveness of every arrangement at one size and one ratio of the heat-capacity rates.
 *
 * @example compareArrangements({ arrangement: "counter-cross-2", NTU: 3, R: 1 }).P // 0.6952
 */
export const compareArrangements: Model<CompareGiven, Compared> = (given, trace = plain) => {
  const one = arrangementOf(given.arrangement);
  const NTU = accept("NTU", "The number of transfer units", given.NTU, {
    kind: "ratio",
    atLeast: 0,
    atMost: LARGEST_NTU,
  });
  const R = accept("R", "The ratio of the heat-capacity rates", given.R, {
    kind: "ratio",
    atLeast: 0,
    atMost: LARGEST_R,
  });
  const P = trace.use(one.effectiveness, { NTU, R }, one.name);
  const P_best =
    one.effectiveness.id === counterflow.id
      ? P
      : trace.use(counterflow, { NTU, R }, arrangementOf("counterflow").name);
  const other = one.swapped === undefined ? undefined : arrangementOf(one.swapped);
  return {
    P,
    P_best,
    P_swapped: other && trace.use(other.effectiveness, { NTU, R }, `hoses swapped: ${other.name}`),
    ...onSmallerStream({ P, R, NTU }, trace),
    all: Object.fromEntries(
      arrangements.map(({ id, effectiveness }) => [id, effectiveness.compute({ NTU, R })]),
    ),
  };
};
