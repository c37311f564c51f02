import { describe, expect, test } from "vitest";
import { DomainError } from "../../../../calc/quantity/domain-error.ts";
import chargeDensity from "../../../../src/calculators/charge-density.ts";
import chargePath from "../../../../src/calculators/charge-path.ts";
import coreLoss from "../../../../src/calculators/core-loss.ts";
import type { Calculator, Field } from "../../../../src/calculators/engine/calculator.ts";
import { type Given, tryModel } from "../../../../src/calculators/engine/evaluate.ts";
import { type Found, solve } from "../../../../src/calculators/engine/solve.ts";
import { box } from "./box.ts";

const still = { budget: 1, now: () => 0 };

/** A calculator of one input and one result, for tests. */
function one(f: (x: number) => number | undefined, field: Partial<Field> = {}): Calculator {
  return {
    id: "one",
    title: "One",
    group: "Test",
    asks: "What is y?",
    inputs: {
      x: { label: "x", symbol: "x", kind: "ratio", start: 1, limits: [0, 4], help: "", ...field },
      idle: { label: "idle", symbol: "x", kind: "ratio", start: 1, limits: [0, 4], help: "" },
    },
    results: { y: { label: "y", symbol: "y", kind: "ratio" } },
    relations: [],
    model: ({ x }) => ({ y: f(x as number) }),
  };
}

const ask = (calculator: Calculator, target: number, input = "x", result = "y") =>
  solve({ calculator, given: startOf(calculator), result, input, target }, still);

const startOf = (calculator: Calculator): Given =>
  Object.fromEntries(Object.entries(calculator.inputs).map(([id, { start }]) => [id, start]));

const rootsOf = (calculator: Calculator, target: number) => (ask(calculator, target) as Found).roots;

describe("solve", () => {
  test("finds both roots of a parabola, and says how closely it looked", () => {
    const found = ask(
      one((x) => (x - 1.3) * (x - 2.7)),
      0.5,
    );
    expect(found).toMatchObject({ kind: "found", from: 0, to: 4, points: 194 });
    const root = Math.sqrt(0.49 + 0.5);
    expect((found as Found).roots.map((x) => x.toFixed(9))).toEqual(
      [2 - root, 2 + root].map((x) => x.toFixed(9)),
    );
  });

  test("finds where a result turns just at the target", () => {
    const [root, ...others] = rootsOf(
      one((x) => 3 - (x - 1.234) ** 2),
      3,
    );
    expect(root).toBeCloseTo(1.234, 4);
    expect(others).toEqual([]);
  });

  test("finds roots over decades", () => {
    const wide = { limits: [1e-6, 1e6], start: 1 } as const;
    for (const x of [3e-6, 2e-3, 7, 4e5])
      expect(rootsOf(one(Math.log, wide), Math.log(x))[0] ?? 0).toBeCloseTo(x, 12 - Math.ceil(Math.log10(x)));
    const fromZero = { limits: [0, 1e6], start: 1 } as const;
    for (const x of [0.5, 20, 900])
      expect(
        (rootsOf(
          one((x) => x / (x + 10), fromZero),
          x / (x + 10),
        )[0] ?? 0) / x,
      ).toBeCloseTo(1, 9);
  });

  test("looks more closely at what is usual", () => {
    const narrow = one((x) => Math.exp(-(((x - 1) / 3e-4) ** 2)), {
      limits: [0, 1000],
      typical: [0.99, 1.01],
    });
    expect(rootsOf(narrow, 0.5)).toHaveLength(2);
  });

  test("takes no pole for an answer", () => {
    const found = ask(
      one((x) => 1 / (x - 1.3)),
      0,
    );
    expect(found).toMatchObject({ kind: "best", stays: "jumps", at: 4, barrier: { at: "limit" } });
    expect(
      rootsOf(
        one((x) => 1 / (x - 1.3)),
        2,
      ),
    ).toEqual([expect.closeTo(1.8, 9)]);
  });

  test("says the best that can be reached, and that the result turns there", () => {
    const best = ask(
      one((x) => 3 - (x - 1.234) ** 2),
      3.5,
    );
    expect(best).toMatchObject({ kind: "best", stays: "below", barrier: { at: "turn" } });
    expect(best.kind === "best" && [best.value, best.at]).toEqual([
      expect.closeTo(3, 12),
      expect.closeTo(1.234, 6),
    ]);
    expect(
      ask(
        one((x) => 3 - (x - 1.234) ** 2),
        1e30,
      ),
    ).toMatchObject({ at: expect.closeTo(1.234, 6) });
  });

  test("says that the field accepts no more", () => {
    expect(
      ask(
        one((x) => 2 * x),
        9,
      ),
    ).toMatchObject({ kind: "best", value: 8, at: 4, stays: "below", barrier: { at: "limit" } });
    expect(
      ask(
        one((x) => 2 * x),
        -1,
      ),
    ).toMatchObject({ value: 0, at: 0, stays: "above" });
  });

  test("says what the model refuses beyond the best", () => {
    const best = solve(
      { calculator: box, given: startOf(box), result: "rho", input: "m", target: 1000 },
      still,
    );
    expect(best).toMatchObject({
      kind: "best",
      at: expect.closeTo(40, 5),
      value: expect.closeTo(400, 4),
      stays: "below",
      barrier: { at: "refusal", says: "The lid lifts." },
    });
  });

  test("says that the result has no meaning beyond the best", () => {
    const best = ask(
      one((x) => (x > 1.5 ? undefined : x)),
      2,
    );
    expect(best).toMatchObject({ at: expect.closeTo(1.5, 7), barrier: { at: "no value" } });
  });

  test("tells of values that all do", () => {
    const clamped = one((x) => Math.max(0, x - 2));
    expect(ask(clamped, 0)).toMatchObject({
      kind: "found",
      roots: [],
      stretches: [{ from: 0, to: expect.closeTo(2, 8) }],
    });
  });

  test("finds whole numbers only where the input is counted", () => {
    const counted = (f: (x: number) => number) =>
      one(
        (x) => {
          if (!Number.isInteger(x)) throw new DomainError("x", "Whole numbers.");
          return f(x);
        },
        { whole: true, limits: [0, 100] },
      );
    expect(
      ask(
        counted((x) => x * x),
        49,
      ),
    ).toMatchObject({ kind: "found", roots: [7], points: 101 });
    expect(
      ask(
        counted((x) => x * x),
        50,
      ),
    ).toMatchObject({
      kind: "best",
      at: 7,
      value: 49,
      stays: "jumps",
      barrier: { at: "whole" },
    });
  });

  test("refuses, and says why", () => {
    const line = one((x) => 2 * x);
    expect(ask(line, 2, "idle")).toEqual({ kind: "refused", why: "no influence" });
    expect(ask(line, 2, "nothing")).toEqual({ kind: "refused", why: "not asked" });
    expect(ask(line, 2, "x", "constructor")).toEqual({ kind: "refused", why: "not asked" });
    expect(ask(line, Number.NaN)).toEqual({ kind: "refused", why: "target" });
    const never = one(() => {
      throw new DomainError("x", "It never works.");
    });
    expect(ask(never, 2)).toEqual({
      kind: "refused",
      why: "nothing",
      refusal: { says: "It never works.", limit: undefined },
    });
    expect(
      ask(
        one(() => undefined),
        2,
      ),
    ).toEqual({ kind: "refused", why: "nothing" });
    const boxed = { calculator: box, given: startOf(box), result: "rho", target: 20 };
    expect(solve({ ...boxed, input: "p" }, still)).toMatchObject({ why: "not asked" });
    expect(solve({ ...boxed, input: "T" }, still)).toMatchObject({ why: "not asked" });
  });

  test("looks at fewer values where the model is slow, and says so", () => {
    let now = 0;
    const slow = one((x) => {
      now += 1;
      return x;
    });
    const found = solve(
      { calculator: slow, given: startOf(slow), result: "y", input: "x", target: 2.5 },
      { budget: 80, now: () => now },
    );
    expect(found).toMatchObject({ kind: "found", points: 50, roots: [expect.closeTo(2.5, 9)] });
  });
});

describe("true ones", () => {
  const backwards = (calculator: Calculator, result: string, input: string, target: number) => {
    const given = startOf(calculator);
    const found = solve({ calculator, given, result, input, target }, still);
    if (found.kind !== "found") throw new Error(`not found: ${JSON.stringify(found)}`);
    return found.roots.map((x) => tryModel(calculator, given, { [input]: x })?.[result]);
  };

  test("the pressure ratio that a charge density needs", () =>
    expect(backwards(chargeDensity, "rho_3", "r", 2.4)).toEqual([expect.closeTo(2.4, 8)]));

  test("the efficiency that an outlet temperature needs", () =>
    expect(backwards(chargeDensity, "T_2", "eta_s", 420)).toEqual([expect.closeTo(420, 6)]));

  test("the boost behind a charge density on the whole path", () =>
    expect(backwards(chargePath, "rho_m", "r", 2)).toEqual([expect.closeTo(2, 8)]));

  test("more charge than any efficiency gives cannot be had", () => {
    const given = startOf(chargeDensity);
    const best = solve(
      { calculator: chargeDensity, given, result: "D_rho_uncooled", input: "eta_s", target: 5 },
      still,
    );
    expect(best).toMatchObject({ kind: "best", at: 1, stays: "below", barrier: { at: "limit" } });
  });

  test("the flow that a core's loss allows", () => {
    const input = Object.keys(coreLoss.inputs).find((id) => id === "m" || id === "m_a");
    expect(input).toBeDefined();
    const result = Object.keys(coreLoss.results)[0] as string;
    const start = tryModel(coreLoss, startOf(coreLoss), {})?.[result] as number;
    expect(backwards(coreLoss, result, input as string, 1.2 * start)[0] ?? 0).toBeCloseTo(1.2 * start, 3);
  });
});
