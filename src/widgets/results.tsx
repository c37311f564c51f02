import { Fragment } from "preact";
import { kinds } from "../../calc/quantity/kinds.ts";
import { writeIn } from "../../calc/quantity/write.ts";
import type { Calculator, Outcome } from "../calculators/engine/calculator.ts";
import { barometerContext, type Surroundings } from "../calculators/engine/entry.ts";
import { noteText, type Success } from "../calculators/engine/evaluate.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { Sym } from "./symbol.tsx";
import { unitLabel } from "./unit-label.ts";

/** The place that a note speaks of, where its sentence only says “here”. */
function placeOf(calculator: Calculator, about: string) {
  const place = calculator.results[about]?.label ?? calculator.inputs[about]?.label ?? about;
  return <i>{place}: </i>;
}

interface Props {
  calculator: Calculator;
  choices: Readonly<Record<string, string>>;
  outcome: Success;
  /** The numbers are of an earlier state: something typed since cannot be used. */
  isStale: boolean;
  isExample: boolean;
  around: Surroundings;
  /** What is said of a result beside its number, where another state is held. */
  beside?: ((id: string) => string) | undefined;
}

type Row = readonly [key: string, result: Outcome];

/** The rows in sight, parted where a heading starts another group. */
function groupsOf(calculator: Calculator, choices: Props["choices"]) {
  const groups: { heading: string | undefined; rows: Row[] }[] = [];
  let heading: string | undefined;
  for (const [key, result] of Object.entries(calculator.results)) {
    heading = result.heading ?? heading;
    if (result.inPicture || !isShown(calculator, result.when, choices)) continue;
    const last = groups.at(-1);
    if (last && last.heading === heading) last.rows.push([key, result]);
    else groups.push({ heading, rows: [[key, result]] });
  }
  return groups;
}

/** What follows from the fields: the answer first, underlined twice. */
export function Results({ calculator, choices, outcome, isStale, isExample, around, beside }: Props) {
  const groups = groupsOf(calculator, choices);
  const listed = new Set(groups.flatMap(({ rows }) => rows.map(([key]) => key)));
  const general = outcome.notes.filter((note) => !listed.has(note.about));
  const line = ([key, result]: Row, isAnswer: boolean) => {
    const unit = kinds[result.kind][around.system];
    const value = outcome.values[key];
    const number = value === undefined ? "—" : writeIn(value, unit, barometerContext(around));
    const notes = outcome.notes.filter((n) => n.about === key);
    const held = beside?.(key);
    const classes = [isAnswer && "answer", isStale && "is-stale", notes.length > 0 && "is-outside"];
    return (
      <div key={key} class={classes.filter(Boolean).join(" ")}>
        <dt>
          {result.label} <Sym of={result.symbol} />
        </dt>
        <dd>
          {isExample && <span class="eg">e.g.</span>}
          <output aria-live="off" data-result={key}>
            {isStale ? `[${number}]` : number}
          </output>
          <span class="u">{value === undefined ? "" : unitLabel(unit)}</span>
        </dd>
        {value === undefined && <dd class="says">It has no meaning at this state.</dd>}
        {held && <dd class="says">{held}</dd>}
        {notes.map((note) => (
          <dd class="says" key={note.says}>
            {noteText(note, around)}
          </dd>
        ))}
      </div>
    );
  };
  return (
    <>
      {groups.map(({ heading, rows }, i) => (
        <Fragment key={heading ?? ""}>
          {heading && <h3 class="group">{heading}</h3>}
          <dl class="res">{rows.map((row, j) => line(row, i + j === 0))}</dl>
        </Fragment>
      ))}
      {general.map((note) => (
        <p class="aside note" key={note.about + note.says}>
          <b>Note</b> {placeOf(calculator, note.about)}
          {noteText(note, around)}
        </p>
      ))}
    </>
  );
}
