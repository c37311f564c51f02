import { kinds } from "../../calc/quantity/kinds.ts";
import { writeIn } from "../../calc/quantity/write.ts";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { barometerContext, type Surroundings } from "../calculators/engine/entry.ts";
import { type Success, withLimit } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { Sym } from "./symbol.tsx";
import { unitLabel } from "./unit-label.ts";

interface Props {
  id: string;
  calculator: Calculator;
  choices: Readonly<Record<string, string>>;
  outcome: Success;
  /** The numbers are of an earlier state: something typed since cannot be used. */
  isStale: boolean;
  isExample: boolean;
  around: Surroundings;
}

/** What follows from the fields: the answer first, underlined twice. */
export function Results({ id, calculator, choices, outcome, isStale, isExample, around }: Props) {
  const shown = Object.entries(calculator.results).filter(
    ([, result]) => !result.inPicture && isShown(calculator, result.when, choices),
  );
  const listed = new Set(shown.map(([key]) => key));
  const general = outcome.notes.filter((note) => !listed.has(note.about));
  return (
    <>
      <dl class="res">
        {shown.map(([key, result], i) => {
          const unit = kinds[result.kind][around.system];
          const number = writeIn(outcome.values[key] ?? Number.NaN, unit, barometerContext(around));
          const notes = outcome.notes.filter((n) => n.about === key);
          const classes = [i === 0 && "answer", isStale && "is-stale", notes.length > 0 && "is-outside"];
          return (
            <div key={key} class={classes.filter(Boolean).join(" ")}>
              <dt>
                {result.label} <Sym of={result.symbol} />
              </dt>
              <dd>
                {isExample && <span class="eg">e.g.</span>}
                <output id={`${id}-${key}`} data-result={key}>
                  {isStale ? `[${number}]` : number}
                </output>
                <span class="u">{unitLabel(unit)}</span>
              </dd>
              {notes.map((note) => (
                <dd class="says" key={note.says}>
                  {withLimit(note.says, note.limit, around)}
                </dd>
              ))}
            </div>
          );
        })}
      </dl>
      {general.map((note) => (
        <p class="aside note" key={note.about + note.says}>
          <b>Note</b> {withLimit(note.says, note.limit, around)}
        </p>
      ))}
    </>
  );
}
