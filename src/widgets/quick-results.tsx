import type { ComponentChildren } from "preact";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { type Entries, type Surroundings, unitOfResult } from "../calculators/engine/entry.ts";
import { noteText, type Success } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { ResultRow } from "./result-row.tsx";

interface Props {
  calculator: Calculator;
  entries: Entries;
  outcome: Success;
  isStale: boolean;
  isExample: boolean;
  around: Surroundings;
  onUnit: (id: string, unit: string) => void;
}

/** The answer, its unit to be chosen; under it what else comes out, beside what can be done with it. */
export function QuickResults({ children, onUnit, ...shared }: Props & { children: ComponentChildren }) {
  const { calculator, entries, around } = shared;
  const [answer, ...others] = Object.entries(calculator.results)
    .filter(([, result]) => isShown(calculator, result.when, entries.choices))
    .map(([id]) => id);
  const row = (id: string) => ({
    ...shared,
    id,
    unit: unitOfResult(calculator, id, entries, around.system),
  });
  return (
    <>
      <dl class="res">
        {answer !== undefined && (
          <ResultRow {...row(answer)} isAnswer onUnit={(unit) => onUnit(answer, unit)} />
        )}
      </dl>
      <div class="under">
        {others.length > 0 && (
          <dl class="res">
            {others.map((id) => (
              <ResultRow key={id} {...row(id)} />
            ))}
          </dl>
        )}
        {children}
      </div>
    </>
  );
}

/** What there is to say about the numbers, with the name of the one that is meant. */
export function QuickNotes({
  calculator,
  outcome,
  around,
}: Pick<Props, "calculator" | "outcome" | "around">) {
  return (
    <>
      {outcome.notes.map((note) => {
        const of =
          calculator.results[note.about]?.label ?? calculator.inputs[note.about]?.label ?? note.about;
        return (
          <p class="aside note" key={note.about + note.says}>
            <b>Note</b> <i>{of}: </i>
            {noteText(note, around)}
          </p>
        );
      })}
    </>
  );
}
