import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { monteCarloOfAll, type Simulated } from "../../../calc/uncertainty/monte-carlo.ts";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import { measurandsOf, type Uncertain } from "../../calculators/engine/uncertainty.ts";

/** What is to be drawn: plain data, so that it can be sent to a worker. */
export interface Job {
  /** Its id. */
  readonly calculator: string;
  readonly uncertain: Uncertain;
  readonly seed: number;
  readonly count: number;
}

/** What the draws of a result come to, with how many fell into each of equal steps from `from` to `to`. */
export interface Drawn extends Omit<Simulated, "values"> {
  readonly from: number;
  readonly to: number;
  readonly counts: readonly number[];
}

export type AllDrawn = Readonly<Record<string, Drawn>>;

const STEPS = 32;
/** A few draws lie so far out that nothing else would be seen: as many as these at either end are left out of the picture. */
const OUT = 0.001;

function withCounts({ values, ...told }: Simulated): Drawn {
  const at = (part: number) => values[Math.round(part * (values.length - 1))] as number;
  const [from, to] = [at(OUT), at(1 - OUT)];
  const counts = new Array<number>(STEPS).fill(0);
  for (const value of values) {
    const step = Math.floor((STEPS * (value - from)) / (to - from));
    if (step >= 0 && step < STEPS) counts[step] = (counts[step] as number) + 1;
  }
  return { ...told, from, to, counts };
}

/** Makes the draws; yields how many are made. The same seed gives the same numbers. Throws as `monteCarloOfAll` does. */
export function* draw(calculator: Calculator, job: Job): Generator<number, AllDrawn, void> {
  const generator = xoroshiro128plus(job.seed);
  const { uncertain, count } = job;
  const found = yield* monteCarloOfAll(
    measurandsOf(calculator, uncertain),
    uncertain.readings,
    uncertain.correlations,
    { count, uniform: () => uniformFloat64(generator) },
  );
  return Object.fromEntries(Object.entries(found).map(([id, simulated]) => [id, withCounts(simulated)]));
}
