import { expect, test } from "vitest";
import { inputNow, isRetired, optionNow } from "../../../../src/calculators/engine/aliases.ts";
import { startEntries } from "../../../../src/calculators/engine/entry.ts";
import { exampleAt, withExamplesOf } from "../../../../src/calculators/engine/former-examples.ts";
import { box } from "./box.ts";

// The filling was 5 up to the first links, then 3 until the second; the lid was shut until the first.
const former = [
  { upTo: 2, calculator: "box", input: "m", start: 3 },
  { upTo: 1, calculator: "box", input: "m", start: 5 },
  { upTo: 1, calculator: "box", input: "lid", start: "shut" },
  { upTo: 2, calculator: "box", input: "lock", start: "of a metal that is no option any more" },
];

test("each version of links means its own examples", () => {
  expect([1, 2, 3].map((of) => exampleAt("box", "m", of, former))).toEqual([5, 3, undefined]);
  expect([1, 2].map((of) => exampleAt("box", "lid", of, former))).toEqual(["shut", undefined]);
  expect(exampleAt("another", "m", 1, former)).toBeUndefined();
});

test("a state takes the examples of a version, and an option only where there is one", () => {
  const start = startEntries(box, "metric");
  const old = withExamplesOf(1, box, start, former);
  expect(old.fields["m"]).toEqual({ ...start.fields["m"], example: 5 });
  expect(old.choices).toEqual({ lid: "shut", lock: "none" });
  expect(withExamplesOf(3, box, start, former)).toEqual(start);
});

test("a part of a calculator has examples of its own, which its links carry", () => {
  const start = startEntries(box, "metric");
  expect(withExamplesOf(1, { ...box, isPart: true }, start, former)).toEqual(start);
});

test("an old id is looked up among those of the table alone", () => {
  const table = {
    calculators: {},
    inputs: { "box.filling": "m" },
    results: {},
    options: { "box.lid.closed": "shut" },
    retired: ["box.colour"],
  };
  expect(["filling", "m", "constructor", "toString"].map((id) => inputNow("box", id, table))).toEqual([
    "m",
    "m",
    "constructor",
    "toString",
  ]);
  expect(optionNow("box", "lid", "closed", table)).toBe("shut");
  expect([isRetired("box", "colour", table), isRetired("box", "m", table)]).toEqual([true, false]);
});
