import { describe, expect, test } from "vitest";
import type { SI } from "../../calc/quantity/domain-error.ts";
import type { Calculator } from "../../src/calculators/engine/calculator.ts";
import { evaluate, type Given, tryModel } from "../../src/calculators/engine/evaluate.ts";
import { freeInputs, listedResults } from "../../src/calculators/engine/shown.ts";
import { solve } from "../../src/calculators/engine/solve.ts";
import { calculators, metric, numRuns, startWith } from "./every-calculator.ts";

/** A round trip comes back to this part of what was wanted. */
const roundTrip = 1e-6;

/** So many pairs of a result and an input are tried of a calculator, evenly over all; each of them in the long test. */
const mostPairs = numRuns > 100 ? Number.POSITIVE_INFINITY : 14;

/** Milliseconds for one calculator on a busy machine. */
const patience = 300_000;

/** The clock stands still, so that the scan is as fine as it gets on any machine. */
const still = { budget: 1, now: () => 0 };

const isNear = (value: SI | undefined, wanted: SI, scale = Math.abs(wanted)): boolean =>
  value !== undefined && Math.abs(value - wanted) <= roundTrip * scale;

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b));

interface Pair {
  readonly input: string;
  readonly result: string;
  /** Values of the input: the present one, and another at which there is a result too. */
  readonly at: readonly SI[];
}

/** Each result that is shown with each input that may be sought. */
function pairsOf(calculator: Calculator, given: Given): readonly Pair[] {
  const choices = startWith(calculator, {}).choices;
  const pairs = freeInputs(calculator, choices).flatMap(([input, { limits, typical = limits, whole }]) => {
    const between = 0.3 * typical[0] + 0.7 * typical[1];
    const at = [given[input] as SI, whole ? Math.round(between) : between];
    return listedResults(calculator, choices).map(([result]) => ({ input, result, at }));
  });
  // Sharing no factor with the number of results, the step comes by each of them.
  let step = Math.max(1, Math.ceil(pairs.length / mostPairs));
  while (step > 1 && greatestCommon(step, listedResults(calculator, choices).length) > 1) step++;
  return pairs.filter((_, i) => i % step === 0);
}

/** What is wrong with a question asked backwards, whose answer is known: the result's own value at `x`. */
function wrongBackwards(calculator: Calculator, given: Given, { input, result }: Pair, x: SI): string | null {
  const valueAt = (value: SI) => tryModel(calculator, given, { [input]: value })?.[result];
  const target = valueAt(x);
  if (target === undefined || !Number.isFinite(target)) return null;
  const solved = solve({ calculator, given, result, input, target }, still);
  const asked = `${result} = ${target} by ${input}, as at ${x}`;
  if (solved.kind === "refused") {
    const isIdle = solved.why === "no influence" && isNear(valueAt(given[input] as SI), target);
    return isIdle ? null : `${asked}: refused, ${solved.why}`;
  }
  if (solved.kind === "best") return `${asked}: best is ${solved.value} at ${solved.at}`;
  const { roots, stretches } = solved;
  const off = [...roots, ...stretches.flatMap(({ from, to }) => [from, to])].filter(
    // What is zero to the last digit is measured by what stands at the start.
    (root) => !isNear(valueAt(root), target, Math.abs(target) || Math.abs(valueAt(given[input] as SI) ?? 1)),
  );
  if (off.length > 0) return `${asked}: off at ${off}, ${off.map(valueAt)}`;
  return roots.length + stretches.length > 0 ? null : `${asked}: nothing`;
}

describe.each(calculators)("$file", ({ calculator }) => {
  const { given } = evaluate(calculator, startWith(calculator, {}), metric);
  const pairs = pairsOf(calculator, given);

  test(
    "every result is found again through every input that it depends on",
    () => {
      expect(pairs.length).toBeGreaterThan(0);
      const wrong = pairs.flatMap((pair) => pair.at.map((x) => wrongBackwards(calculator, given, pair, x)));
      expect(wrong.filter((says) => says !== null)).toEqual([]);
    },
    patience,
  );

  test("its ids leave room for what a link says of a wanted result, and of uncertainty", () => {
    const ids = Object.keys(calculator.inputs);
    expect(ids.filter((id) => ["want", "pm", "barometer"].includes(id))).toEqual([]);
  });

  test(
    "what no input can reach is answered with the nearest and a reason, or refused",
    () => {
      for (const { input, result } of pairs.filter((_, i) => i % 5 === 0)) {
        const target = 1e30;
        const solved = solve({ calculator, given, result, input, target }, still);
        if (solved.kind === "refused") expect(solved.why).toBe("no influence");
        else {
          expect(solved.kind).toBe("best");
          if (solved.kind !== "best") continue;
          expect(solved.stays).toBe("below");
          expect(isNear(tryModel(calculator, given, { [input]: solved.at })?.[result], solved.value)).toBe(
            true,
          );
        }
      }
    },
    patience,
  );
});
