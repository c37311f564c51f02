import { expect, test } from "vitest";
import { runChecks } from "../../../src/checks/run-checks.ts";
import { casesAsCsv, casesShown } from "../../../src/components/cases.ts";

const results = runChecks();

test("a short check shows all its cases, a long one those that come out worst", () => {
  for (const result of results) {
    const shown = casesShown(result);
    const worst = (cases: typeof result.cases) =>
      Math.max(
        0,
        ...cases.flatMap(({ outputs }) => outputs.map(({ deviation }) => Math.abs(deviation ?? 0))),
      );
    expect(worst(shown)).toBe(worst(result.cases));
    const rows = shown.reduce((sum, { outputs }) => sum + outputs.length, 0);
    expect(shown.length === result.cases.length || rows <= 60).toBe(true);
  }
  expect(results.some((result) => casesShown(result).length < result.cases.length)).toBe(true);
});

test("the file of a check holds every comparison, with the numbers that were compared", () => {
  for (const result of results) {
    const lines = casesAsCsv(result).trimEnd().split("\n");
    const comparisons = result.cases.flatMap(({ outputs }) => outputs);
    expect(lines).toHaveLength(comparisons.length + 1);
    const names = (lines[0] ?? "").split(",");
    const line = lines[1] ?? "";
    // A quoted cell holds a comma; those lines are counted, and not taken apart here.
    if (line.includes('"')) continue;
    const cells = line.split(",");
    expect(cells).toHaveLength(names.length);
    const first = comparisons[0];
    expect(cells[names.indexOf("expected")]).toBe(String(first?.expected ?? "none"));
    expect(cells[names.indexOf("computed")]).toBe(String(first?.computed ?? "none"));
  }
});
