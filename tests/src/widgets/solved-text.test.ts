import { describe, expect, test } from "vitest";
import { DomainError } from "../../../calc/quantity/domain-error.ts";
import { readQuantity } from "../../../calc/quantity/read.ts";
import chargeDensity from "../../../src/calculators/charge-density.ts";
import type { Calculator, Field } from "../../../src/calculators/engine/calculator.ts";
import type { Surroundings } from "../../../src/calculators/engine/entry.ts";
import { type Given, tryModel } from "../../../src/calculators/engine/evaluate.ts";
import { solve } from "../../../src/calculators/engine/solve.ts";
import { type Asked, tell, typedText } from "../../../src/widgets/solved-text.ts";

const around: Surroundings = { system: "metric", barometer: { value: 1e5, isExample: true } };
const still = { budget: 1, now: () => 0 };

function asked(f: (T: number) => number | undefined, target: number, field: Partial<Field> = {}): Asked {
  const calculator: Calculator = {
    id: "one",
    title: "One",
    group: "Test",
    asks: "What is it?",
    inputs: {
      T: {
        label: "Warmth",
        symbol: "T",
        kind: "temperature",
        start: 300,
        limits: [273.15, 373.15],
        help: "",
        ...field,
      },
    },
    results: { rho: { label: "Density", symbol: "rho", kind: "density" } },
    relations: [],
    model: ({ T }) => ({ rho: f(T as number) }),
  };
  const question = { calculator, given: { T: 300 }, result: "rho", input: "T", target };
  return { question, inputUnit: "degC", resultUnit: "kg/m3", around };
}

const told = (one: Asked) => tell(one, solve(one.question, still));

describe("the answer in words", () => {
  test("one value, with how closely was looked", () => {
    expect(told(asked((T) => T / 100, 3))).toEqual({
      says: "One value does: 26.9\u00a0°C.",
      offers: [{ value: expect.closeTo(300, 6), shown: "26.9\u00a0°C", typed: "26.85" }],
      looked:
        "Looked at 194 values from 0\u00a0°C to 100\u00a0°C. Two answers between neighbours of these can be missed.",
    });
  });

  test("several, told apart where four figures are the same", () => {
    const { says, offers } = told(asked((T) => 10 + (T - 300.01) * (T - 300.02), 10));
    expect(says).toBe("Two values do: 26.8600\u00a0°C and 26.8700\u00a0°C.");
    expect(offers).toHaveLength(2);
  });

  test("a span", () => {
    expect(told(asked((T) => Math.max(2, T / 160), 2)).says).toMatch(
      /^Every value looked at from 0\.0\u00a0°C to 46\.8\u00a0°C does\.$/,
    );
  });

  test.each([
    [
      (T: number) => T / 100,
      4,
      {},
      "No value from 0\u00a0°C to 100\u00a0°C does. The most that is reached is 3.731\u00a0kg/m³, at 100.0\u00a0°C. The field takes no value beyond that.",
    ],
    [
      (T: number) => 2 + ((T - 310) / 100) ** 2,
      1,
      {},
      "The least that is reached is 2.000\u00a0kg/m³, at 36.9\u00a0°C. It is higher on both sides of that.",
    ],
    [
      (T: number) => (T > 350 ? undefined : T / 100),
      3.6,
      {},
      "at 76.8\u00a0°C. Beyond that the result has no meaning.",
    ],
    [
      (T: number) => {
        if (T > 350) throw new DomainError("T", "It melts.", { value: 350, kind: "temperature" });
        return T / 100;
      },
      3.6,
      {},
      "Beyond that: It melts. The bound is 76.85\u00a0°C.",
    ],
    [(T: number) => (T < 310 ? 1 : 3), 2, {}, "It jumps from one side of what is wanted to the other."],
    [(T: number) => T / 100, 3.0015, { whole: true }, "Only whole numbers are taken."],
  ] as const)("no value: the nearest, and why", (f, target, field, says) => {
    const { says: all, offers } = told(asked(f, target, field));
    expect(all).toContain(says);
    expect(offers).toEqual([]);
  });

  test("a near miss does not look like what was wanted", () => {
    expect(told(asked((T) => T / 100 + 0.0002, 3.73171)).says).toContain(
      "The most that is reached is 3.73170\u00a0kg/m³",
    );
  });

  test("refusals", () => {
    expect(told(asked(() => 2, 2)).says).toBe(
      "“Density” does not depend on “Warmth”, as the other fields stand. Another field has to be chosen.",
    );
    const cold = asked(() => {
      throw new DomainError("T", "It never melts.");
    }, 2);
    expect(told(cold).says).toBe(
      "As the other fields stand, no value of “Warmth” gives a result. It never melts.",
    );
  });
});

test("the number to be typed is as short as it may be, and gives what is wanted", () => {
  const given: Given = Object.fromEntries(
    Object.entries(chargeDensity.inputs).map(([id, { start }]) => [id, start]),
  );
  const question = { calculator: chargeDensity, given, result: "rho_3", input: "p_in", target: 2.6 };
  const solved = solve(question, still);
  if (solved.kind !== "found") throw new Error("not found");
  for (const inputUnit of ["kPa", "psi", "bar-g"]) {
    const text = typedText({ question, inputUnit, resultUnit: "kg/m3", around }, solved.roots[0] ?? 0);
    expect(text.length).toBeLessThan(12);
    const reading = readQuantity(text, "pressure", inputUnit, { barometer: 1e5 });
    const value = reading.ok ? tryModel(chargeDensity, given, { p_in: reading.value })?.["rho_3"] : undefined;
    expect(Math.abs((value ?? 0) / 2.6 - 1)).toBeLessThan(1e-6);
  }
});
