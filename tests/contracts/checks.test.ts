import { describe, expect, test } from "vitest";
import type { Range } from "../../calc/relation/relation.ts";
import bibliography from "../../calc/sources.bib?raw";
import { relations } from "../../src/checks/relations.ts";
import { type CheckResult, runChecks } from "../../src/checks/run-checks.ts";

const results = runChecks();
const steps = results.flatMap((result) => result.steps);

/** One line for each output that misses its band. */
function misses({ cases }: CheckResult): string[] {
  return cases.flatMap(({ in: given, outputs, refused }) =>
    outputs
      .filter(({ pass }) => !pass)
      .map(
        ({ output, expected, computed, allowed, deviation }) =>
          `${JSON.stringify(given)}: ${output} is ${computed}, expected ${expected} within ${allowed}` +
          (deviation === null ? "" : `, off by ${(100 * deviation).toPrecision(3)} %`) +
          (refused === undefined ? "" : ` (refused: ${refused})`),
      ),
  );
}

/** Within 1 % of the span of a range, so that the check speaks for the end and not for the middle. */
const isAtEnd = (x: number, end: number, { from, to }: Range) => Math.abs(x - end) <= 0.01 * (to - from);

describe("every outside check is met", () => {
  test.for(results)(
    "$check.id: $check.title ($check.source.key, $check.source.where, $check.source.standing)",
    (result) => {
      expect(misses(result)).toEqual([]);
    },
  );
});

describe("every check file", () => {
  test("names a source of the bibliography", () => {
    const keys = new Set(Array.from(bibliography.matchAll(/^@\w+\{([^,\s]+),/gm), ([, key]) => key));
    const unknown = results.map(({ check }) => check.source.key).filter((key) => !keys.has(key));
    expect(unknown).toEqual([]);
  });
});

describe("every relation", () => {
  test("is exercised by at least one check", () => {
    const exercised = new Set(results.flatMap((result) => result.relations));
    expect([...relations.keys()].filter((id) => !exercised.has(id)).sort()).toEqual([]);
  });

  test("has a check at every end of its stated ranges", () => {
    const bare = [...relations.values()].flatMap(({ id, ranges }) => {
      const inputs = steps.filter((step) => step.relation === id).map((step) => step.inputs);
      return (ranges ?? []).flatMap((range) =>
        [range.from, range.to]
          .filter((end) => !inputs.some((given) => isAtEnd(given[range.input] ?? Number.NaN, end, range)))
          .map((end) => `${id}: ${range.input} = ${end}`),
      );
    });
    expect(bare.sort()).toEqual([]);
  });
});
