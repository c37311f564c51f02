import { useEffect, useMemo, useRef } from "preact/hooks";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { narrow } from "../calculators/engine/narrow.ts";
import { turned } from "../calculators/engine/turn.ts";
import type { View } from "../calculators/engine/view.ts";
import { keepAboveKeyboard } from "./above-keyboard.ts";
import { Copied, useCopying } from "./copying.tsx";
import { Inputs } from "./inputs.tsx";
import { QuickNotes, QuickResults } from "./quick-results.tsx";
import { Spoken } from "./spoken.tsx";
import { Switch } from "./switch.tsx";
import { Unread } from "./unread.tsx";
import { useCalculator } from "./use-calculator.ts";
import { wholeLink } from "./whole-link.ts";

/** One question of a calculator on one screen: its fields, and the answer in a strip that stays in sight. */
export function QuickSheet({ calculator: whole, view }: { calculator: Calculator; view: View }) {
  const calculator = useMemo(() => narrow(whole, view), [whole, view]);
  const running = useCalculator(calculator);
  const { around, entries, evaluation, standing, isStale, unread, set } = running;
  const strip = useRef<HTMLDivElement>(null);
  useEffect(() => (strip.current ? keepAboveKeyboard(strip.current) : undefined), []);
  const { copied, copy } = useCopying(entries);
  const copyAnswer = () =>
    copy("Answer", async () => {
      const { pageLink } = await import("./page-link.ts");
      const { answerAsText } = await import("./exports/numbers-as-text.ts");
      return answerAsText({ calculator, entries, outcome: evaluation.outcome, around }, pageLink());
    });
  const turning = {
    ...running,
    choose: (choices: typeof entries.choices) =>
      set(turned(calculator, entries, evaluation, around, choices)),
  };

  return (
    <>
      <Unread says={unread} />
      <div class="two">
        <div class="give">
          <p class="sub">You give</p>
          <Inputs calculator={calculator} running={turning} Choice={Switch} isTerse />
          {standing && !isStale && (
            <QuickNotes calculator={calculator} outcome={standing.outcome} around={around} />
          )}
        </div>
        <div class="get" ref={strip}>
          <p class="sub">You get</p>
          <Spoken calculator={calculator} evaluation={evaluation} entries={entries} around={around} />
          {isStale && (
            <p class="msg stale">
              <b>Not current.</b> {evaluation.trouble ?? "The marked field cannot be used."}
            </p>
          )}
          {standing && (
            <QuickResults
              calculator={calculator}
              entries={{ ...standing.entries, ...(entries.units && { units: entries.units }) }}
              outcome={standing.outcome}
              isStale={isStale}
              isExample={evaluation.examples > 0}
              around={around}
              onUnit={(id, unit) => set({ ...entries, units: { ...entries.units, [id]: unit } })}
            >
              <div class="tools needs-js">
                <button type="button" class="btn first" disabled={isStale} onClick={copyAnswer}>
                  {copied?.isDone ? "Answer copied" : "Copy answer"}
                </button>
                <Copied copied={copied} isSpoken />
              </div>
            </QuickResults>
          )}
        </div>
      </div>
      <div class="tools">
        <a class="btn quiet" href={wholeLink(whole, view, running)}>
          Every step of the working
        </a>
        <button type="button" class="btn quiet needs-js" onClick={() => print()}>
          Print
        </button>
        <button type="button" class="btn quiet needs-js" onClick={running.reset}>
          Back to the example
        </button>
      </div>
    </>
  );
}
