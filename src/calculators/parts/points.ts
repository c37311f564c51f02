import { DomainError, type SI } from "../../../calc/quantity/domain-error.ts";
import type { Choice, Field, When } from "../engine/calculator.ts";

/** How many lines there may be, in the words of the choice. */
const counts = ["two", "three", "four", "five", "six"] as const;
type Count = (typeof counts)[number];
type Line = 1 | 2 | 3 | 4 | 5 | 6;

const linesOf = (count: Count): number => counts.indexOf(count) + 2;

/** One of the two quantities of a line, and what stands in it as an example from the first line on. */
interface Column<Id extends string> extends Omit<Field, "start" | "when" | "help"> {
  readonly id: Id;
  readonly starts: readonly SI[];
  readonly help?: string;
}

interface Table<C extends string, X extends string, Y extends string> {
  /** The id of the choice of how many lines there are. */
  readonly count: C;
  readonly label: string;
  /** What one line is called: “point”. */
  readonly line: string;
  readonly from: Count;
  readonly to: Count;
  readonly start: Count;
  readonly heading?: string;
  readonly x: Column<X>;
  readonly y: Column<Y>;
  readonly when?: When;
}

/** Fields for a short table: a choice of how many lines it has, and two numbers a line, `X_1`, `Y_1` and so on. */
export function pointInputs<C extends string, X extends string, Y extends string>({
  count,
  label,
  line,
  from,
  to,
  start,
  heading,
  x,
  y,
  when,
}: Table<C, X, Y>) {
  const offered = counts.slice(counts.indexOf(from), counts.indexOf(to) + 1);
  const fieldOf = <Id extends string>({ id, starts, help = "", ...column }: Column<Id>, i: number) => {
    const enough = offered.filter((one) => linesOf(one) > i);
    const isOptional = enough.length < offered.length;
    const field: Field = {
      ...column,
      label: `${column.label}, ${line} ${i + 1}`,
      start: starts[i] as SI,
      help: i === 0 ? help : "",
      when: { ...when, ...(isOptional && { [count]: enough }) },
    };
    return [`${id}_${i + 1}`, field] as const;
  };
  const choice: Choice = {
    label,
    options: Object.fromEntries(offered.map((one) => [one, one])),
    start,
    help: "",
    ...(when && { when }),
    ...(heading && { heading }),
  };
  const lines = Array.from({ length: linesOf(to) }, (_, i) => [fieldOf(x, i), fieldOf(y, i)]).flat();
  return { [count]: choice, ...Object.fromEntries(lines) } as Readonly<
    Record<C, Choice> & Record<`${X | Y}_${Line}`, Field>
  >;
}

/** The lines in sight of a table with these two columns, as the models want them. */
export function pointsFrom(
  given: Readonly<Record<string, unknown>>,
  x: string,
  y: string,
): readonly (readonly [SI, SI])[] {
  const points: (readonly [SI, SI])[] = [];
  for (let i = 1; typeof given[`${x}_${i}`] === "number"; i++)
    points.push([given[`${x}_${i}`] as SI, given[`${y}_${i}`] as SI]);
  return points;
}

/** Runs a model, and puts what it refuses of a whole table to the first field of that. */
export function atFirstLine<Out>(first: Readonly<Record<string, string>>, run: () => Out): Out {
  try {
    return run();
  } catch (error) {
    const field = error instanceof DomainError ? first[error.field] : undefined;
    if (field === undefined) throw error;
    throw new DomainError(field, (error as DomainError).message, (error as DomainError).limit);
  }
}
