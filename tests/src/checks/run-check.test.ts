import { describe, expect, test } from "vitest";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { explicit } from "../../../calc/relation/relation.ts";
import { readCheck } from "../../../src/checks/check.ts";
import { runCheck } from "../../../src/checks/run-check.ts";
import { subject } from "../../../src/checks/subject.ts";

const file = {
  title: "A square",
  source: { key: "somebody1900", where: "Table 1", standing: "from memory" },
  made: "Copied from the table.",
  units: { x: "1", square: "1", root: "1 (of a positive x)", sign: "1 (a word)" },
  tolerance: { relative: 0.01, absolute: { root: 0.05 }, why: "Three digits." },
  subject: "squares",
  cases: [{ in: { x: 4 }, out: { square: 16, root: 2, sign: "plus" } }],
};

const square = explicit({
  id: "test/square",
  title: "Square",
  inputs: { x: { symbol: "x", kind: "ratio" } },
  result: { symbol: "y", kind: "ratio" },
  sources: [{ key: "somebody1900", where: "Table 1", standing: "from memory" }],
  compute: ({ x }: { x: number }) => x * x,
  expression: "x^2",
});

const squares = subject<{ x: number }>(({ x }, trace) => {
  if (x > 100) throw new DomainError("x", "The number is too large. Accepted: up to the limit.");
  return {
    square: trace.use(square, { x }, "here"),
    root: x < 0 ? null : Math.sqrt(x),
    sign: x < 0 ? "minus" : "plus",
  };
});

const run = (x: number, out: Record<string, number | string | null>, rest: object = {}) => {
  const { absolute: _, ...relative } = file.tolerance;
  const tolerance = "root" in out ? file.tolerance : relative;
  return runCheck(
    readCheck("squares", { ...file, tolerance, ...rest, cases: [{ in: { x }, out }] }),
    squares,
  );
};

describe("a check", () => {
  test("passes on right numbers and records the relations that it used", () => {
    const result = run(4, { square: 16.1, root: 2, sign: "plus" });
    expect(result.pass).toBe(true);
    expect(result.relations).toEqual(["test/square"]);
    expect(result.worst).toEqual({
      square: { relative: expect.closeTo(0.1 / 16.1, 12), difference: expect.closeTo(0.1, 12) },
      root: { relative: 0, difference: 0 },
    });
  });

  test("fails on a wrong number and says by how much", () => {
    const result = run(4, { square: 17, root: 2 });
    expect(result.pass).toBe(false);
    expect(result.cases[0]?.outputs).toMatchObject([
      {
        output: "square",
        expected: 17,
        computed: 16,
        difference: -1,
        deviation: -1 / 17,
        allowed: "1 %",
        pass: false,
      },
      { output: "root", pass: true },
    ]);
  });

  test("passes inside the relative or the absolute band, whichever is wider", () => {
    expect(run(9, { root: 3.04 }).pass).toBe(true);
    expect(run(9, { root: 3.06 }).pass).toBe(false);
    expect(run(100, { root: 10.08 }).pass).toBe(true);
    expect(run(100, { root: 10.2 }).pass).toBe(false);
    expect(run(9, { root: 3 }).cases[0]?.outputs[0]?.allowed).toBe("1 % or 0.05");
  });

  test("holds an output of the very same equations to the tight band only", () => {
    const faithful = { outputs: ["root"], relative: 1e-6, why: "The same equation." };
    expect(run(9, { root: 3.000001 }, { faithful }).pass).toBe(true);
    expect(run(9, { root: 3.00001 }, { faithful }).pass).toBe(false);
    expect(run(9, { square: 81.5, root: 3 }, { faithful }).pass).toBe(true);
  });

  test("lets null and words pass only when they match exactly", () => {
    expect(run(-4, { root: null, sign: "minus" }).pass).toBe(true);
    expect(run(4, { root: null }).pass).toBe(false);
    expect(run(-4, { root: 2 }).pass).toBe(false);
    expect(run(4, { sign: "minus" }).pass).toBe(false);
    expect(run(4, { sign: 1 }).pass).toBe(false);
    expect(run(4, { square: "16" }).pass).toBe(false);
  });

  test("fails on an output that the subject does not give, even where null is expected", () => {
    const units = { ...file.units, cube: "1" };
    expect(run(4, { cube: null, root: 2 }, { units }).pass).toBe(false);
  });

  test("fails on a number that is none", () => {
    expect(runCheck(readCheck("squares", file), { compute: () => ({ square: Number.NaN }) }).pass).toBe(
      false,
    );
  });

  test("fails with the sentence when the input is refused", () => {
    const result = run(101, { square: 10201, root: 10 });
    expect(result.pass).toBe(false);
    expect(result.cases[0]?.refused).toBe("x: The number is too large. Accepted: up to the limit.");
  });
});

describe("a check file", () => {
  const complaint = (change: object) => () => readCheck("squares", { ...file, ...change });

  test("names either a relation or a subject", () => {
    expect(complaint({ relation: "test/square" })).toThrow("content/checks/squares.json");
    expect(complaint({ subject: undefined })).toThrow("either `relation`");
  });

  test("explains every name that its cases use", () => {
    expect(complaint({ units: { x: "1", square: "1", sign: "1" } })).toThrow("the cases use `root`");
  });

  test("has no tolerance for an output that does not occur", () => {
    expect(complaint({ tolerance: { ...file.tolerance, per_output: { cube: 0.1 } } })).toThrow("`cube`");
  });

  test("of one relation has the output `value` only", () => {
    expect(complaint({ subject: undefined, relation: "test/square" })).toThrow("called `value`");
  });

  test("has no key that nobody reads", () => {
    expect(complaint({ toleranse: 1 })).toThrow("toleranse");
  });
});
