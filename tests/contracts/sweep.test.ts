import { describe, expect, test } from "vitest";
import { startEntries } from "../../src/calculators/engine/entry.ts";
import { evaluate } from "../../src/calculators/engine/evaluate.ts";
import { firstThatMatters } from "../../src/calculators/engine/matters.ts";
import { listedResults, numbersInSight } from "../../src/calculators/engine/shown.ts";
import { spanAround, sweep } from "../../src/calculators/engine/sweep.ts";
import { calculators, metric } from "./every-calculator.ts";

describe.each(calculators.map(({ calculator }) => [calculator.id, calculator] as const))(
  "%s",
  (_, calculator) => {
    const entries = startEntries(calculator, "metric");
    const { given, outcome } = evaluate(calculator, entries, metric);
    const results = listedResults(calculator, entries.choices).map(([id]) => id);
    const inputs = numbersInSight(calculator, entries.choices);

    test("every number may be swept: the curves pass through the state at hand, and every gap is explained", () => {
      expect(outcome).not.toBeNull();
      for (const [along, field] of inputs) {
        const value = Number(given[along]);
        const [from, to] = spanAround(field, value);
        expect(from).toBeLessThan(to);
        // The state at hand is one of the ends of the second half.
        const swept = field.whole
          ? sweep({ calculator, given, along, results, from, to })
          : sweep({
              calculator,
              given,
              along,
              results,
              from: value,
              to: to > value ? to : value + 1e-6,
              count: 5,
            });
        for (const { result, points } of swept.curves) {
          const here = points.find(([x]) => x === value)?.[1];
          const expected = outcome?.values[result];
          if (expected === undefined) expect(here).toBeNaN();
          else expect(here, `${result} along ${along}`).toBe(expected);
          for (const [x, y] of points) {
            if (Number.isFinite(y)) continue;
            const said = swept.stretches.filter(
              ({ what, about, from, to }) =>
                x >= from && x <= to && (what === "refused" || (what === "no value" && about === result)),
            );
            expect(said.length, `${result} along ${along} at ${x}`).toBeGreaterThan(0);
            for (const { says } of said) expect(says).toMatch(/\.$/);
          }
        }
      }
    });

    test("the sweep that is shown first moves", () => {
      const first = results[0];
      if (first === undefined) return;
      const along = firstThatMatters(calculator, given, first, outcome?.values[first]);
      expect(along).toBeDefined();
      const field = inputs.find(([id]) => id === along)?.[1];
      if (along === undefined || !field) return;
      const [from, to] = spanAround(field, Number(given[along]));
      const { curves } = sweep({ calculator, given, along, results: [first], from, to });
      const ys = (curves[0]?.points ?? []).map(([, y]) => y).filter(Number.isFinite);
      expect(Math.max(...ys)).toBeGreaterThan(Math.min(...ys));
    });
  },
);
