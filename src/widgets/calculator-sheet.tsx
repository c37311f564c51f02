import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import type { Calculator } from "../calculators/engine/calculator.ts";
import type { Evaluation } from "../calculators/engine/evaluate.ts";
import { withHeld } from "../calculators/engine/want.ts";
import { HoldButtons } from "./hold/hold-buttons.tsx";
import { useHold } from "./hold/use-hold.ts";
import { Inputs } from "./inputs.tsx";
import { LaterFold } from "./later-fold.tsx";
import { DrawnPicture, picturesFor } from "./picture.tsx";
import { Results } from "./results.tsx";
import { Spoken } from "./spoken.tsx";
import { Tools } from "./tools.tsx";
import { useTouchParts } from "./touch.ts";
import { Unread } from "./unread.tsx";
import { type Running, useCalculator } from "./use-calculator.ts";
import { useSpread } from "./use-spread.ts";
import { useWorking } from "./use-working.ts";

/** Everything of a calculator but its working, which the build typesets beside it. */
export function CalculatorSheet({
  calculator,
  title = calculator.title,
  foot,
}: {
  calculator: Calculator;
  title?: string;
  /** What stands under it, from what stands in it. */
  foot?: (running: Running) => ComponentChildren;
}) {
  const computed = useCalculator(calculator);
  const { around, entries, standing, isStale, unread } = computed;
  const evaluation = withHeld(calculator, entries, computed.evaluation, around);
  const running = { ...computed, evaluation };
  const touch = useTouchParts();
  const root = useRef<HTMLDivElement>(null);
  const hold = useHold(calculator, running);
  const compared = hold.compared;
  const { want } = entries;
  const spread = useSpread(calculator, running, compared?.beside);
  useWorking(root, standing?.outcome ?? null, isStale, around);

  // A path is drawn over its fields, everything else under them.
  const pictures = standing ? picturesFor(calculator, standing.entries.choices) : [];
  const drawn = (over: boolean) =>
    standing &&
    pictures
      .filter((picture) => (picture.draw === "stations") === over)
      .map((picture, place) => (
        <DrawnPicture
          key={place}
          picture={picture}
          isStale={isStale}
          state={{ calculator, given: standing.evaluation.given, values: standing.outcome.values, around }}
        />
      ));

  return (
    <div ref={root}>
      <header>
        <h2 id={`${calculator.id}-title`}>{title}</h2>
        <p>{countOf(evaluation)}</p>
      </header>
      <Unread says={unread} />
      {drawn(true)}
      <div class="two">
        <div class="give">
          <p class="sub">You give</p>
          <Inputs
            calculator={compared?.calculator ?? calculator}
            running={compared?.running ?? running}
            isPart={foot !== undefined}
          />
        </div>
        <div class="get">
          <p class="sub">You get</p>
          <Spoken calculator={calculator} evaluation={evaluation} entries={entries} around={around} />
          {isStale && (
            <p class="msg stale">
              <b>Not current.</b>{" "}
              {evaluation.trouble ?? "The numbers below are from before the marked field was changed."}
            </p>
          )}
          {standing && (
            <Results
              calculator={calculator}
              choices={standing.entries.choices}
              outcome={standing.outcome}
              isStale={isStale}
              isExample={evaluation.examples > 0}
              around={around}
              beside={spread.beside}
            />
          )}
          {!foot && (
            <LaterFold
              part="solve"
              summary={`Work backwards${want?.isHeld ? ", held" : ""}`}
              class={`back${want?.isHeld ? " is-held" : ""}`}
              isWanted={want !== undefined}
              calculator={calculator}
              running={running}
            />
          )}
          {!foot && (
            <LaterFold
              part="uncertainty"
              summary="How uncertain is it? ±"
              class={`doubt${spread.isAsked ? " is-held" : ""}`}
              isWanted={spread.isAsked}
              calculator={calculator}
              running={running}
            />
          )}
        </div>
      </div>
      {drawn(false)}
      {!foot && (
        <LaterFold
          part="sweep"
          summary="How it changes"
          class="swept"
          isWanted={false}
          calculator={calculator}
          running={running}
        />
      )}
      <Tools shown={{ calculator, entries, outcome: evaluation.outcome, around }} onReset={running.reset}>
        <HoldButtons hold={hold} isStale={isStale} />
      </Tools>
      {foot?.(running)}
      {touch && <touch.AnswerStrip calculator={calculator} running={running} />}
    </div>
  );
}

/** How many of the fields in sight nobody has touched. */
function countOf({ examples, fields }: Evaluation): string {
  if (examples === 0) return "All values are yours";
  return examples === 1
    ? `1 of ${fields} is an example value`
    : `${examples} of ${fields} are example values`;
}
