import type { RefObject } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import type { Surroundings } from "../calculators/engine/entry.ts";
import type { Success } from "../calculators/engine/evaluate.ts";
import { fetchTemplates, readTemplates, showWorking, stepCount } from "./working.ts";

/**
 * Keeps the working that the build typeset beside a calculator in step with its numbers.
 *
 * Closed working is not laid out and costs nothing: it is filled when it opens. Filling in a layout effect keeps the
 * formulas in the same frame as the results.
 */
export function useWorking(
  root: RefObject<HTMLElement>,
  outcome: Success | null,
  isStale: boolean,
  around: Surroundings,
): void {
  const templates = useRef<Map<string, Element> | null>(null);
  useLayoutEffect(() => {
    const details = root.current
      ?.closest("[data-calculator]")
      ?.querySelector<HTMLDetailsElement>("details.work");
    const list = details?.querySelector("ol");
    if (!details || !list || !outcome) return;
    const { steps, relations } = outcome;
    let isOver = false;
    const show = async () => {
      if (!details.open) return;
      templates.current ??= readTemplates(details);
      const known = templates.current;
      // Without a wait where nothing has to be fetched, so that formulas change in the same frame as the results.
      if (steps.some((step) => !known.has(step.relation))) await fetchTemplates(known, steps);
      if (!isOver) showWorking(list, known, steps, relations, around);
    };
    show();
    const count = details.querySelector("[data-step-count]");
    if (count) count.textContent = stepCount(steps.length);
    const mark = details.querySelector<HTMLElement>("[data-not-current]");
    if (mark) mark.hidden = !isStale;
    details.addEventListener("toggle", show);
    return () => {
      isOver = true;
      details.removeEventListener("toggle", show);
    };
  }, [root, outcome, isStale, around]);
}
