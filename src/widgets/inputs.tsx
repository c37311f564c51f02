import { Fragment } from "preact";
import { type Calculator, isChoice } from "../calculators/engine/calculator.ts";
import { isShown } from "../calculators/engine/shown.ts";
import { ChoiceRow } from "./choice.tsx";
import { FieldRow } from "./field.tsx";
import type { Running } from "./use-calculator.ts";

interface Props {
  calculator: Calculator;
  running: Running;
  /** How choices are drawn. */
  Choice?: typeof ChoiceRow;
  /** Says nothing of where a barometer comes from. */
  isTerse?: boolean;
  /** Stands in a text, where what a field takes is said by the whole calculator, a link away. */
  isPart?: boolean;
}

/** What the visitor gives: the inputs that are shown with the choices made. */
export function Inputs({ calculator, running, Choice = ChoiceRow, isTerse = false, isPart = false }: Props) {
  const { entries, evaluation, around, fromElevation, choose, setField } = running;
  return (
    <>
      {!isPart && (
        <p class="msg takes needs-js">
          A field also takes units and calculations: {"3/8\u00a0in + 2\u00a0mm."}
        </p>
      )}
      {Object.entries(calculator.inputs).map(([id, input]) => {
        if (!isShown(calculator, input.when, entries.choices)) return null;
        const name = `${calculator.id}-${id}`;
        const heading = input.heading && <h3 class="group">{input.heading}</h3>;
        if (isChoice(input)) {
          return (
            <Fragment key={id}>
              {heading}
              <Choice
                id={name}
                choice={input}
                value={entries.choices[id] ?? input.start}
                arrangement={input.drawn?.(entries.choices)}
                onChoose={(option) => choose({ ...entries.choices, [id]: option })}
              />
            </Fragment>
          );
        }
        const own = entries.fields[id];
        if (!own) return null;
        const isFollowing = input.barometer && own.typed === null;
        const entry = isFollowing ? { ...own, example: around.barometer.value } : own;
        return (
          <Fragment key={id}>
            {heading}
            <FieldRow
              id={name}
              field={input}
              entry={entry}
              isExample={own.typed === null && (!input.barometer || around.barometer.isExample)}
              messages={evaluation.messages[id] ?? []}
              around={around}
              help={
                isFollowing && !isTerse ? followed(around.barometer.isExample, fromElevation) : input.help
              }
              onEntry={(next) => setField(id, next)}
            />
          </Fragment>
        );
      })}
    </>
  );
}

/** Where a barometer comes from that was not typed into the calculator itself. */
function followed(isExample: boolean, fromElevation: boolean): string {
  if (isExample) return "An example. Set yours here, or at the head of the page.";
  return fromElevation
    ? "Worked out from the elevation at the head of the page."
    : "From the head of the page.";
}
