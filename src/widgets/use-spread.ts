import { useEffect, useState } from "preact/hooks";
import { plusMinusParts } from "../../calc/quantity/plus-minus.ts";
import type { Calculator } from "../calculators/engine/calculator.ts";
import type { Success } from "../calculators/engine/evaluate.ts";
import type { Running } from "./use-calculator.ts";

type Code = typeof import("./uncertainty/told.ts");

/** Milliseconds that typing rests before what is slow is computed. */
const REST = 120;

/**
 * What stands behind ± of results, beside what else is said of them. The code that computes it comes with the first ±;
 * `isAsked` says that some field holds one, or that it was said how ± is meant.
 */
export function useSpread(calculator: Calculator, running: Running, beside?: (id: string) => string) {
  const { entries, evaluation, around, standing } = running;
  const [code, setCode] = useState<Code | null>(null);
  const [rested, setRested] = useState<Success | null>(null);
  const { want, pm } = entries;
  const isTyped =
    Object.keys(evaluation.within).length > 0 || (want?.isHeld && plusMinusParts(want.typed) !== undefined);
  const mayMatter = isTyped || around.barometer.within !== undefined;
  const outcome = standing?.outcome ?? null;
  useEffect(() => {
    if (mayMatter && !code) import("./uncertainty/told.ts").then((found) => setCode(() => found));
  }, [mayMatter, code]);
  useEffect(() => {
    if (!mayMatter) return;
    const timer = setTimeout(() => setRested(outcome), REST);
    return () => clearTimeout(timer);
  }, [mayMatter, outcome]);
  const told = mayMatter && code ? code.toldOf(calculator, running, rested === outcome) : null;
  const hasSome = isTyped || Object.keys(told?.uncertain.readings ?? {}).length > 0;
  return {
    isAsked: hasSome || pm !== undefined,
    beside:
      hasSome && code
        ? (id: string) =>
            [code.besideOf(calculator, running, told, id), beside?.(id)].filter(Boolean).join(" ")
        : beside,
  };
}
