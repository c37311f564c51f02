import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { kinds } from "../../../calc/quantity/kinds.ts";
import type { Calculator } from "../../calculators/engine/calculator.ts";
import type { Success } from "../../calculators/engine/evaluate.ts";
import { usual } from "../../calculators/engine/plus-minus.ts";
import {
  type Propagation,
  propagateIn,
  type Uncertain,
  uncertainIn,
} from "../../calculators/engine/uncertainty.ts";
import type { Running } from "../use-calculator.ts";
import { factorOf, toldWay, writeDifference } from "./written.ts";

/** What is uncertain in the standing state, and what follows, or why nothing does. */
export interface Told {
  readonly uncertain: Uncertain;
  readonly propagation: Propagation | null;
  readonly says: string;
}

/** Milliseconds that may be taken at each key; what takes longer waits until typing rests. */
const QUICK = 5;

const known = new WeakMap<Success, Told>();
let taken = 0;

function tell(calculator: Calculator, uncertain: Uncertain): Told {
  if (Object.keys(uncertain.readings).length === 0) return { uncertain, propagation: null, says: "" };
  try {
    return { uncertain, propagation: propagateIn(calculator, uncertain), says: "" };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { uncertain, propagation: null, says: error.message };
  }
}

/** What is told of the standing state: null where there is none, or where it is slow and typing has not rested. */
export function toldOf(calculator: Calculator, running: Running, isRested: boolean): Told | null {
  const { standing, around } = running;
  if (!standing) return null;
  const before = known.get(standing.outcome);
  if (before || (taken > QUICK && !isRested)) return before ?? null;
  const start = performance.now();
  const told = tell(calculator, uncertainIn(calculator, standing.entries, standing.evaluation, around));
  taken = performance.now() - start;
  known.set(standing.outcome, told);
  return told;
}

/** What stands beside a result: `± 0.021 kg/m³ (k = 2)`. Where it is still to be computed the line is held for it. */
export function besideOf(calculator: Calculator, running: Running, told: Told | null, id: string): string {
  const { around, entries, isStale } = running;
  const result = calculator.results[id];
  const { shows } = entries.pm ?? usual;
  if (isStale || !result) return "";
  if (!told) return "±\u00a0…";
  const found = told.propagation?.results[id];
  if (!found) return "";
  const width = writeDifference(factorOf[shows] * found.u, kinds[result.kind][around.system]);
  return `±\u00a0${width} (${toldWay[shows]})`;
}
