import { useEffect, useRef, useState } from "preact/hooks";
import { kinds } from "../../calc/quantity/kinds.ts";
import type { Calculator } from "../calculators/engine/calculator.ts";
import { answerOf } from "../calculators/engine/shown.ts";
import { keepAboveKeyboard } from "./above-keyboard.ts";
import { ResultRow } from "./result-row.tsx";
import type { Running } from "./use-calculator.ts";

/** A window this high, in pixels, has a keyboard under it. */
const highestOverKeyboard = 500;

const isOverKeyboard = (): boolean =>
  matchMedia("(max-width: 48.99rem)").matches &&
  (visualViewport?.height ?? innerHeight) <= highestOverKeyboard;

/**
 * The answer of a long sheet, in sight above the keyboard while something is typed. It only repeats what the sheet says, so
 * who listens does not hear it twice.
 */
export function AnswerStrip({ calculator, running }: { calculator: Calculator; running: Running }) {
  const { around, evaluation, standing, isStale } = running;
  const strip = useRef<HTMLDivElement>(null);
  const [isOn, setOn] = useState(false);
  useEffect(() => {
    const sheet = strip.current?.closest(".sheet");
    const look = () => {
      const inUse = document.activeElement;
      setOn(inUse instanceof HTMLInputElement && sheet?.contains(inUse) === true && isOverKeyboard());
    };
    look();
    const stop = strip.current ? keepAboveKeyboard(strip.current) : undefined;
    const seen = window.visualViewport;
    seen?.addEventListener("resize", look);
    addEventListener("focusin", look);
    addEventListener("focusout", look);
    return () => {
      stop?.();
      seen?.removeEventListener("resize", look);
      removeEventListener("focusin", look);
      removeEventListener("focusout", look);
    };
  }, []);
  const answer = standing && answerOf(calculator, standing.entries.choices);
  return (
    <div class="pinned" aria-hidden="true">
      <div ref={strip} hidden={!isOn}>
        {isOn && answer && (
          <>
            {isStale && (
              <p class="msg">
                <b>Not current.</b>
              </p>
            )}
            <dl class="res">
              <ResultRow
                calculator={calculator}
                id={answer[0]}
                unit={kinds[answer[1].kind][around.system]}
                outcome={standing.outcome}
                isStale={isStale}
                isExample={evaluation.examples > 0}
                around={around}
              />
            </dl>
          </>
        )}
      </div>
    </div>
  );
}
