import type { ComponentChildren } from "preact";
import { kinds } from "../../calc/quantity/kinds.ts";
import { writeIn } from "../../calc/quantity/write.ts";
import type { Calculator } from "../calculators/engine/calculator.ts";
import {
  barometerContext,
  type Entries,
  type Surroundings,
  unitOfResult,
} from "../calculators/engine/entry.ts";
import { noteText, type Success } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { Sym } from "./symbol.tsx";
import { unitLabel } from "./unit-label.ts";

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
export function QuickResults({ children, ...props }: Props & { children: ComponentChildren }) {
  const { calculator, entries } = props;
  const [answer, ...others] = Object.entries(calculator.results)
    .filter(([, result]) => isShown(calculator, result.when, entries.choices))
    .map(([id]) => id);
  return (
    <>
      <dl class="res">{answer !== undefined && <Row {...props} id={answer} isAnswer />}</dl>
      <div class="under">
        {others.length > 0 && (
          <dl class="res">
            {others.map((id) => (
              <Row {...props} key={id} id={id} />
            ))}
          </dl>
        )}
        {children}
      </div>
    </>
  );
}

function Row(props: Props & { id: string; isAnswer?: boolean }) {
  const { calculator, entries, outcome, isStale, isExample, around, onUnit, id, isAnswer = false } = props;
  const result = calculator.results[id];
  if (!result) return null;
  const { label, symbol, kind } = result;
  const unit = unitOfResult(calculator, id, entries, around.system);
  const value = outcome.values[id];
  const number = value === undefined ? "—" : writeIn(value, unit, barometerContext(around));
  const isOutside = outcome.notes.some((note) => note.about === id);
  const look = [isAnswer && "answer", isStale && "is-stale", isOutside && "is-outside"];
  const offered: readonly string[] = kinds[kind].units;
  return (
    <div class={look.filter(Boolean).join(" ")}>
      <dt>
        {label} <Sym of={symbol} />
      </dt>
      <dd>
        {isExample && <span class="eg">e.g.</span>}
        <output aria-live="off" data-result={id}>
          {isStale ? `[${number}]` : number}
        </output>
        {isAnswer && offered.length > 1 ? (
          <select
            class="u"
            aria-label={`Unit of ${label.toLowerCase()}`}
            value={unit}
            onChange={(event) => onUnit(id, event.currentTarget.value)}
          >
            {offered.map((one) => (
              <option key={one} value={one}>
                {unitLabel(one) || "(0 to 1)"}
              </option>
            ))}
          </select>
        ) : (
          <span class="u">{value === undefined ? "" : unitLabel(unit)}</span>
        )}
      </dd>
    </div>
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
