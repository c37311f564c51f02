import { describe, expect, test } from "vitest";
import { plain } from "../../../../calc/relation/trace.ts";
import chargePath from "../../../../src/calculators/charge-path.ts";
import coolerRating from "../../../../src/calculators/cooler-rating.ts";
import type { Calculator } from "../../../../src/calculators/engine/calculator.ts";
import type { Given } from "../../../../src/calculators/engine/evaluate.ts";
import { evenly, spanAround, sweep } from "../../../../src/calculators/engine/sweep.ts";

const startOf = ({ inputs }: Calculator): Given =>
  Object.fromEntries(Object.entries(inputs).map(([id, { start }]) => [id, start]));

const given = startOf(chargePath);
const path = { calculator: chargePath, given, along: "T_3", results: ["rho_m"] } as const;

describe("a sweep", () => {
  test("has the model's own values", () => {
    const { curves, stretches } = sweep({ ...path, from: 303.15, to: 343.15 });
    expect(stretches).toEqual([]);
    expect(curves).toHaveLength(1);
    expect(curves[0]?.points).toHaveLength(41);
    for (const [x, y] of curves[0]?.points ?? [])
      expect(y).toBe(chargePath.model({ ...given, T_3: x }, plain)["rho_m"]);
  });

  test("of an ideal gas at one pressure follows one over the temperature", () => {
    const { curves } = sweep({ ...path, from: 303.15, to: 343.15 });
    const products = (curves[0]?.points ?? []).map(([T, rho]) => T * rho);
    for (const product of products) expect(product).toBeCloseTo(products[0] ?? 0, 9);
  });

  test("has a gap where the model refuses, whose ends are the model's own bounds", () => {
    const { curves, stretches } = sweep({ ...path, from: 273.15, to: 423.15 });
    const refused = stretches.filter(({ what }) => what === "refused");
    expect(refused).toHaveLength(2);
    const [cold, hot] = refused;
    // The air cannot be colder than the water, nor hotter than the compressor makes it.
    expect(cold?.from).toBe(273.15);
    expect(cold?.to).toBeCloseTo(Number(given["T_w_in"]), 1);
    expect(cold?.says).toMatch(/colder than the water/);
    expect(hot?.from).toBeCloseTo(chargePath.model(given as never, plain)["T_2"] ?? 0, 1);
    expect(hot?.to).toBe(423.15);
    const isGap = (x: number) => refused.some(({ from, to }) => x >= from && x <= to);
    for (const [x, y] of curves[0]?.points ?? []) expect(Number.isFinite(y)).toBe(!isGap(x));
  });

  test("of a family has a curve for each member, each with that member's own remarks", () => {
    const { curves, stretches } = sweep({
      ...path,
      from: 303.15,
      to: 393.15,
      family: { input: "r", values: [1.5, 2, 2.5] },
    });
    expect(curves.map(({ member }) => member)).toEqual([1.5, 2, 2.5]);
    const mid = (i: number) => curves[i]?.points.find(([x]) => x > 320)?.[1] ?? Number.NaN;
    expect(mid(0)).toBeLessThan(mid(1));
    expect(mid(1)).toBeLessThan(mid(2));
    // A smaller ratio heats less, so that its curve ends sooner.
    const ends = stretches.filter(({ what }) => what === "refused").map(({ member, from }) => [member, from]);
    expect(ends.map(([member]) => member)).toEqual([1.5, 2]);
    expect(ends[0]?.[1]).toBeLessThan(Number(ends[1]?.[1]));
  });

  test("of several results computes each place once, and agrees with each alone", () => {
    let runs = 0;
    const counted: Calculator = {
      ...coolerRating,
      model: (...args) => {
        runs += 1;
        return coolerRating.model(...args);
      },
    };
    const question = { given: startOf(coolerRating), along: "UA", from: 200, to: 900 } as const;
    const both = sweep({ ...question, calculator: counted, results: ["T_3", "Q"] });
    expect(runs).toBe(41);
    const alone = sweep({ ...question, calculator: coolerRating, results: ["Q"] });
    expect(both.curves[1]?.points).toEqual(alone.curves[0]?.points);
  });

  test("of a counted input stands at whole numbers only", () => {
    const twice: Calculator = {
      ...chargePath,
      inputs: { ...chargePath.inputs, r: { ...chargePath.inputs["r"], whole: true } as never },
    };
    const { curves } = sweep({ calculator: twice, given, along: "r", results: ["T_2"], from: 1.5, to: 4.2 });
    expect(curves[0]?.points.map(([x]) => x)).toEqual([2, 3, 4]);
  });

  test("takes a note from where it begins", () => {
    const { stretches } = sweep({
      calculator: chargePath,
      given: { ...given, humidity: "relative" },
      along: "varphi_0",
      results: ["rho_m"],
      from: 0.05,
      to: 1,
    });
    for (const { from, to } of stretches) {
      expect(from).toBeGreaterThanOrEqual(0.05);
      expect(to).toBeLessThanOrEqual(1);
      expect(to).toBeGreaterThanOrEqual(from);
    }
  });
});

describe("the span that is swept first", () => {
  const field = { label: "", symbol: "", kind: "ratio", start: 2, limits: [0, 3], help: "" } as const;
  test("lies around the value, and within the limits", () => {
    expect(spanAround(field, 1)).toEqual([0.5, 1.5]);
    expect(spanAround(field, 2.8)).toEqual([1.4, 3]);
  });
  test("is never empty", () => {
    expect(spanAround(field, 0)).toEqual([0, 3]);
  });
});

test("evenly spread values hold both ends", () => expect(evenly(1, 2, 3)).toEqual([1, 1.5, 2]));
