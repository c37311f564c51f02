import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { describe, expect, test } from "vitest";
import { monteCarloOfAll } from "../../../../calc/uncertainty/monte-carlo.ts";
import boostRatio from "../../../../src/calculators/boost-ratio.ts";
import chargePath from "../../../../src/calculators/charge-path.ts";
import type { Calculator } from "../../../../src/calculators/engine/calculator.ts";
import {
  type Entries,
  entryText,
  type Surroundings,
  startEntries,
} from "../../../../src/calculators/engine/entry.ts";
import { evaluate } from "../../../../src/calculators/engine/evaluate.ts";
import { writeLink } from "../../../../src/calculators/engine/link.ts";
import { type PlusMinus, usual } from "../../../../src/calculators/engine/plus-minus.ts";
import { readLink } from "../../../../src/calculators/engine/read-link.ts";
import { stepped } from "../../../../src/calculators/engine/step.ts";
import {
  measurandsOf,
  propagateIn,
  readPair,
  type Uncertain,
  uncertainIn,
} from "../../../../src/calculators/engine/uncertainty.ts";
import { behindOf, withBehind } from "../../../../src/calculators/engine/within-text.ts";
import { box } from "./box.ts";

const around: Surroundings = { system: "metric", barometer: { value: 1e5, isExample: true } };

function typing(
  calculator: Calculator,
  typed: Readonly<Record<string, string>>,
  more: Partial<Entries> = {},
): Entries {
  const start = startEntries(calculator, "metric");
  const fields = Object.fromEntries(
    Object.entries(start.fields).map(([id, entry]) => [id, { ...entry, typed: typed[id] ?? entry.typed }]),
  );
  return { ...start, fields, ...more };
}

const uncertainOf = (calculator: Calculator, entries: Entries, surroundings = around): Uncertain =>
  uncertainIn(calculator, entries, evaluate(calculator, entries, surroundings), surroundings);

function drawn(calculator: Calculator, uncertain: Uncertain, count = 20_000) {
  const generator = xoroshiro128plus(3);
  const draws = monteCarloOfAll(
    measurandsOf(calculator, uncertain),
    uncertain.readings,
    uncertain.correlations,
    { count, uniform: () => uniformFloat64(generator) },
  );
  let step = draws.next();
  while (!step.done) step = draws.next();
  return step.value;
}

const pm = (changes: Partial<PlusMinus>): PlusMinus => ({ ...usual, ...changes });

describe("what stands behind ± of the fields", () => {
  const entries = typing(box, { m: "2 ± 0.1", V: "100 ± 1" });

  test("is kept by the evaluation, in SI", () => {
    expect(evaluate(box, entries, around).within).toEqual({ m: 0.1, V: 0.001 });
  });

  // By hand: u of m/V is ρ√((u_m/m)² + (u_V/V)²).
  test.each([
    ["expanded", 20 * Math.hypot(0.025, 0.005)],
    ["standard", 20 * Math.hypot(0.05, 0.01)],
    ["limits", (20 * Math.hypot(0.05, 0.01)) / Math.sqrt(3)],
  ] as const)("%s: what follows is as by hand", (means, u) => {
    const { results } = propagateIn(box, uncertainOf(box, { ...entries, pm: pm({ means }) }));
    expect(results["rho"]?.u).toBeCloseTo(u, 5);
    expect(results["rho"]?.share["m"]).toBeCloseTo(25 / 26, 6);
  });

  test("errors that go together wholly cancel in a ratio", () => {
    const same = typing(box, { m: "2 ± 0.02", V: "100 ± 1" });
    const together = [{ a: "m", b: "V", typed: "1" }];
    const { results } = propagateIn(box, uncertainOf(box, { ...same, pm: pm({ together }) }));
    expect(results["rho"]?.u).toBeLessThan(1e-6);
  });

  test.each(["2", "-1.01", "a lot", "", "1e999", "NaN"])("a correlation of “%s” is refused", (typed) => {
    expect("says" in readPair(typed)).toBe(true);
    const together = [{ a: "m", b: "V", typed }];
    expect(uncertainOf(box, { ...entries, pm: pm({ together }) }).correlations).toEqual([]);
  });

  test("pairs that contradict each other are refused with a sentence", () => {
    const three = typing(chargePath, { T_0: "25 ± 1", r: "2.2 ± 0.1", eta_s: "0.7 ± 0.01" });
    const together = [
      { a: "T_0", b: "r", typed: "1" },
      { a: "r", b: "eta_s", typed: "1" },
      { a: "T_0", b: "eta_s", typed: "-1" },
    ];
    const uncertain = uncertainOf(chargePath, { ...three, pm: pm({ together }) });
    expect(() => propagateIn(chargePath, uncertain)).toThrow(/contradict/);
  });

  test.each([
    ["2 ± 3", /larger than the value/],
    ["2 ± -1", /zero or more/],
    ["2 ± lots", /Behind ±/],
  ])("%s gets a sentence at its field", (m, says) => {
    const messages = evaluate(box, typing(box, { m }), around).messages["m"] ?? [];
    expect(messages.map((one) => one.says).join(" ")).toMatch(says);
  });

  test("a ± that reaches past the limits gets a sentence with them", () => {
    const messages = evaluate(box, typing(box, { V: "9999 ± 5" }), around).messages["V"] ?? [];
    expect(messages.map((one) => one.says).join(" ")).toMatch(/goes past what is accepted/);
  });

  test("what is drawn past the limits of a field is lost, and said to be", () => {
    const { rho } = drawn(box, uncertainOf(box, typing(box, { m: "0.1 ± 0.1" })));
    // Two standard deviations below the value stands zero: 2.275 % lie beyond it, from memory.
    expect((rho?.lost ?? 0) / 20_000).toBeCloseTo(0.02275, 2);
  });
});

describe("the barometer", () => {
  const misty: Surroundings = { ...around, barometer: { value: 1e5, isExample: false, within: 2000 } };

  test("counts where a field is it", () => {
    expect(uncertainOf(box, typing(box, {}), misty).readings).toEqual({
      p: { value: 1e5, u: 1000, spread: "normal" },
    });
  });

  test("moves what was read on a gauge one for one, so that a ratio of both moves less", () => {
    const entries = typing(boostRatio, {});
    const asked = Object.entries(boostRatio.inputs).filter(
      ([, input]) => "kind" in input && input.kind === "pressure" && !input.barometer,
    );
    for (const [id] of asked) {
      const field = { ...(entries.fields[id] as Entries["fields"][string]), typed: "20 kPa gauge" };
      const onGauge = uncertainOf(
        boostRatio,
        { ...entries, fields: { ...entries.fields, [id]: field } },
        misty,
      );
      expect(onGauge.onGauge[id]).toBeCloseTo(1, 9);
    }
  });

  test("counts without a field of its own once something is read on a gauge", () => {
    const { p: _, ...inputs } = box.inputs;
    const gauged: Calculator = {
      ...box,
      inputs: {
        ...inputs,
        q: { label: "Pressure", symbol: "p_1", kind: "pressure", start: 2e5, limits: [1e4, 1e6], help: "" },
      },
      results: { q: { label: "Pressure", symbol: "p_1", kind: "pressure" } },
      model: (given) => ({ q: Number(given["q"]) }),
    };
    const read = (q: string) =>
      propagateIn(gauged, uncertainOf(gauged, typing(gauged, { q }), misty)).results["q"];
    expect(read("50 kPa gauge ± 0 kPa")?.u).toBeCloseTo(1000, 3);
    expect(read("50 kPa gauge ± 2 kPa")?.u).toBeCloseTo(1000 * Math.SQRT2, 3);
    expect(read("150 kPa absolute ± 2 kPa")?.u).toBeCloseTo(1000, 3);
  });
});

describe("a held result", () => {
  const want = { result: "rho_m", input: "r", typed: "2.3", unit: "kg/m3", shown: "kg/m3", isHeld: true };
  const choices = { ...startEntries(chargePath, "metric").choices, cooler: "effectiveness" };
  const found = { ...typing(chargePath, { T_0: "25 ± 2", eta_s: "0.7 ± 0.02" }), choices, want };
  /** The ratio is found by bisection, apart from the engine. */
  function withRatio(entries: Entries): Entries {
    let [low, high] = [1.2, 4];
    for (let i = 0; i < 60; i += 1) {
      const r = (low + high) / 2;
      const fields = {
        ...entries.fields,
        r: { ...(entries.fields["r"] as Entries["fields"][string]), typed: String(r) },
      };
      const { outcome } = evaluate(chargePath, { ...entries, fields }, around);
      if ((outcome?.values["rho_m"] ?? 0) < 2.3) low = r;
      else high = r;
    }
    const r = { ...(entries.fields["r"] as Entries["fields"][string]), typed: String(low) };
    return { ...entries, fields: { ...entries.fields, r } };
  }

  test("the found input follows the implicit function, and the other results follow it, as draws solved anew show", () => {
    const uncertain = uncertainOf(chargePath, withRatio(found));
    const { results, found: ratio } = propagateIn(chargePath, uncertain);
    expect(results["rho_m"]?.u).toBe(0);
    const simulated = drawn(chargePath, uncertain, 8000);
    // 4.5 standard deviations of a standard deviation of 8,000 draws.
    const bound = 4.5 / Math.sqrt(2 * 7999);
    for (const id of ["p_2", "T_m", "W_c"])
      expect(Math.abs((simulated[id]?.u ?? 0) / (results[id]?.u ?? 1) - 1), id).toBeLessThan(bound + 0.01);
    const warmer = withRatio({
      ...found,
      fields: {
        ...found.fields,
        T_0: { ...(found.fields["T_0"] as Entries["fields"][string]), typed: "26" },
      },
    });
    const moved = Number(warmer.fields["r"]?.typed) - Number(withRatio(found).fields["r"]?.typed);
    expect(ratio?.sensitivity["T_0"]).toBeCloseTo(moved, 3);
  });

  test("a ± of what is wanted comes through the slope", () => {
    const loose = {
      ...withRatio(typing(chargePath, {}, { choices })),
      want: { ...want, typed: "2.3 ± 0.1" },
    };
    const { found: ratio, results } = propagateIn(chargePath, uncertainOf(chargePath, loose));
    expect(results["rho_m"]?.u).toBeCloseTo(0.05, 9);
    expect(ratio?.u).toBeGreaterThan(0.04);
  });
});

describe("the text of a field", () => {
  const { V, T } = box.inputs;
  if (!V || !T || !("kind" in V) || !("kind" in T)) throw new Error("no field");
  const entry = (typed: string | null, unit: string, shown = unit) => ({ typed, example: 0.1, unit, shown });

  test("keeps its ± in another unit, and in steps", () => {
    expect(entryText(T, entry("45 ± 2", "degC", "degF"), around)).toBe("113 ± 3.6");
    expect(stepped(V, entry("100 ± 2", "L"), around, 1)).toMatch(/^\d+ ± 2$/);
  });

  test("takes a ± from beside it, and gives it back", () => {
    const half = withBehind(V, entry("100", "L"), around, "2");
    expect(half.typed).toBe("100 ± 2");
    expect(behindOf(V, half, around)).toBe("2");
    expect(withBehind(V, half, around, "").typed).toBe("100");
    expect(withBehind(T, entry("45 ± 2 °C", "degF"), around, "3").typed).toBe("45 °C ± 3");
    expect(withBehind(V, entry(null, "L"), around, "2 %").typed).toBe("100 ± 2 %");
  });
});

describe("links", () => {
  const surroundings = {
    ...around,
    barometerEntry: { typed: null, example: 1e5, unit: "kPa", shown: "kPa" },
  };
  const hash = (value: string) => `v=2&charge-path.pm=${value}`;

  test("carry how ± is meant", () => {
    const meant = pm({ means: "limits", together: [{ a: "T_0", b: "r", typed: "−0.5" }] });
    const entries = { ...startEntries(chargePath, "metric"), pm: meant };
    const link = writeLink([{ calculator: chargePath, entries }], surroundings);
    expect(link).toContain("charge-path.pm=limits;expanded;T_0;r;");
    expect(readLink(link, [chargePath]).entries["charge-path"]?.pm).toEqual(meant);
    const plain = writeLink([{ calculator: chargePath, entries: { ...entries, pm: usual } }], surroundings);
    expect(plain).not.toContain(".pm=");
  });

  test.each([
    "",
    "expanded",
    "constructor;expanded",
    "standard;__proto__",
    "standard;standard;T_0",
    "standard;standard;T_0;hasOwnProperty;1",
    "standard;standard;cooler;T_0;1",
    "standard;standard;T_0;r;%E0%A4%A",
    `standard;standard;T_0;r;${"9".repeat(21)}`,
    `standard;standard${";T_0;r;1".repeat(21)}`,
  ])("“%s” is refused with a sentence", (value) => {
    const { entries, unread } = readLink(hash(value), [chargePath]);
    expect(unread).toEqual(["How ± is meant, by the link, could not be read. What is usual stands there."]);
    expect(entries["charge-path"]?.pm).toBeUndefined();
  });
});
