import { describe, expect, test } from "vitest";
import { writeNumber } from "../../../../calc/quantity/write.ts";
import {
  type AnyRelation,
  explicit,
  implicit,
  numerical,
  property,
} from "../../../../calc/relation/relation.ts";
import { typesetRelation, typesetSymbol } from "../../../../src/integrations/typeset/relation.ts";
import { fillSlots, fillSlotsHtml } from "../../../../src/widgets/slots.ts";

const sources = [{ key: "none", where: "", standing: "derived here" }] as const;
const temperature = { symbol: "T_in", kind: "temperature" } as const;
const pressure = { symbol: "p_in", kind: "pressure" } as const;
const ratio = { symbol: "r", kind: "ratio" } as const;
const about = { id: "test/relation", title: "A relation of this test", sources } as const;

/** The two halves of every formula, as text: what is seen, and what a screen reader is given. */
function halves(html: string): { seen: string; read: string } {
  const seen = html.replace(/<math[\s\S]*?<\/math>/g, "");
  const read = [...html.matchAll(/<math[\s\S]*?<\/math>/g)].join(" ");
  const text = (part: string) =>
    part
      .replace(/<[^>]*>/g, "")
      .replace(/[\u200b\u2061]/g, "")
      .replace(/[\u00a0\u202f]/g, " ")
      .replace(/\s+/g, " ")
      .trim();
  return { seen: text(seen), read: text(read) };
}

const written = (values: Record<string, number>, digits?: number) =>
  Object.fromEntries(Object.entries(values).map(([key, x]) => [key, writeNumber(x, digits)]));

const numbersOf = (relation: AnyRelation, values: Record<string, number>, digits?: number) =>
  halves(fillSlotsHtml(typesetRelation(relation).numbers, written(values, digits)));

const between = (expression: string, names: readonly string[]): AnyRelation =>
  explicit({
    ...about,
    inputs: Object.fromEntries(names.map((name) => [name, ratio])),
    result: ratio,
    expression,
    compute: () => 1,
  });

describe("numbers in their slots", () => {
  /** The text as read, and the same numbers in the half that is seen (where a denominator comes first). */
  const both = (relation: AnyRelation, values: Record<string, number>, text: string) => {
    const html = fillSlotsHtml(typesetRelation(relation).numbers, written({ ...values, "=": 7 }));
    const slots = (element: string) =>
      [...html.matchAll(new RegExp(`<${element}[^>]* data-slot="([^"]*)"[^>]*>([^<]*)<`, "g"))]
        .map(([, key, number]) => `${key} ${number}`)
        .sort();
    expect(halves(html).read).toBe(`r=${text} =7.000`);
    expect(slots("span")).toEqual(slots("mn"));
    expect(slots("mn").length).toBe(Object.keys(values).length + 1);
  };

  test("a negative number has brackets after a sign and as a factor, and only there", () => {
    both(between("a-b", ["a", "b"]), { a: -1, b: -2 }, "−1.000−(−2.000)");
    both(between("a+b", ["a", "b"]), { a: 1, b: -2 }, "1.000+(−2.000)");
    both(between("a*b", ["a", "b"]), { a: -1, b: -2 }, "−1.000×(−2.000)");
    both(between("a-b*c", ["a", "b", "c"]), { a: 1, b: -2, c: 3 }, "1.000−(−2.000)×3.000");
    both(between("-a", ["a"]), { a: -3 }, "−(−3.000)");
  });

  test("a power of ten has brackets where a power is taken", () => {
    both(between("a^2", ["a"]), { a: 1.2e-5 }, "(1.200 × 10⁻⁵)2");
    both(between("a*b", ["a", "b"]), { a: 1.2e-5, b: 3 }, "1.200 × 10⁻⁵×3.000");
    both(between("r^(a/b)", ["r", "a", "b"]), { r: 2, a: 1, b: 1.2e7 }, "2.0001.000/(1.200 × 10⁷)");
  });

  test("bases, exponents, roots and fractions", () => {
    both(between("a^b", ["a", "b"]), { a: -2, b: -3 }, "(−2.000)−3.000");
    both(between("sqrt(a)", ["a"]), { a: 4 }, "4.000");
    both(between("a/b", ["a", "b"]), { a: -4, b: -5 }, "−4.000−5.000");
    both(between("(a/b)^c", ["a", "b", "c"]), { a: 4, b: 5, c: 6 }, "(4.0005.000)6.000");
    both(between("exp(-a)", ["a"]), { a: -4 }, "e−(−4.000)");
  });

  test("neighbouring numbers do not run together for a screen reader", () => {
    const html = typesetRelation(between("a*b", ["a", "b"])).numbers;
    expect(fillSlotsHtml(html, written({ a: 12, b: 34 }))).toMatch(
      /<mn[^>]*>12\.00<\/mn><mo>×<\/mo><mn[^>]*>34\.00<\/mn>/,
    );
  });

  test("digits are the caller's", () => {
    expect(numbersOf(between("a-b", ["a", "b"]), { a: 1, b: 2, "=": -1 }, 2).read).toBe("r=1.0−2.0 =−1.0");
  });

  test("slots without a value stay as they are", () => {
    const { numbers } = typesetRelation(between("a-b", ["a", "b"]));
    expect(fillSlotsHtml(numbers, {})).toBe(numbers);
  });

  test("in a document the same text is written", () => {
    const { numbers } = typesetRelation(between("a-b^2", ["a", "b"]));
    const values = written({ a: -1, b: -2, "=": 1e-5 });
    const slots = [...numbers.matchAll(/data-slot="([^"]*)" data-at="([^"]*)"/g)].map(([, key, at]) => ({
      getAttribute: (name: string) => (name === "data-slot" ? key : at),
      textContent: "",
    }));
    fillSlots({ querySelectorAll: () => slots } as unknown as ParentNode, values);
    const filled = [...fillSlotsHtml(numbers, values).matchAll(/data-at="[^"]*">([^<]*)</g)];
    expect(slots.map((slot) => slot.textContent)).toEqual(filled.map(([, text]) => text));
    expect(slots).toHaveLength(6);
  });
});

describe("the four forms", () => {
  test("explicit: formula, then the result with its unit, in working units", () => {
    const outlet = {
      ...about,
      inputs: { p_in: pressure, r: ratio },
      result: { symbol: "p_out", kind: "pressure" },
      expression: "p_in*r",
      compute: (x: { p_in: number; r: number }) => x.p_in * x.r,
    } as const;
    const typeset = typesetRelation(explicit(outlet));
    expect(halves(typeset.symbols).read).toMatch(/^pout=pin ?r$/);
    expect(numbersOf(explicit(outlet), { p_in: 99, r: 2, "=": 198 }).read).toBe(
      "pout=99.00×2.000 =198.0 kPa",
    );
    expect(numbersOf(explicit({ ...outlet, working: "si" }), { p_in: 99e3, r: 2, "=": 198e3 }).read).toBe(
      "pout=99 000×2.000 =198 000 Pa",
    );
  });

  test("a constant is filled at build, in working units", () => {
    const relation = explicit({
      ...about,
      inputs: { T_in: temperature },
      result: { symbol: "h_in", kind: "specificEnergy" },
      expression: "R_a*T_in",
      compute: (x) => x.T_in,
    });
    const { numbers } = typesetRelation(relation);
    expect(halves(numbers).read).toMatch(/hin=0\.28\d+×/);
    expect(halves(numbers).seen).toMatch(/hin=0\.28\d+×/);
    expect(numbers).not.toMatch(/data-slot="R_a"/);
  });

  test("property: the units stand beside the arguments", () => {
    const relation = property({
      ...about,
      inputs: { T: { symbol: "T", kind: "temperature" }, w: { symbol: "w", kind: "humidityRatio" } },
      result: { symbol: "h", kind: "specificEnergy" },
      name: "h",
      tex: "h(T, w)",
      compute: () => 1,
    });
    expect(numbersOf(relation, { T: 373.2, w: 0, "=": 100.6 }).read).toBe("h(373.2 K,0 kg/kg)=100.6 kJ/kg");
  });

  test("implicit: what was wanted, what was found, and put back", () => {
    const relation = implicit({
      ...about,
      inputs: {
        h_out: { symbol: "h_out", kind: "specificEnergy" },
        w: { symbol: "w", kind: "humidityRatio" },
      },
      result: { symbol: "T_out", kind: "temperature" },
      unknown: "T_out",
      residual: "h(T_out, w) - h_out",
      compute: () => 1,
    });
    expect(halves(typesetRelation(relation).symbols).read).toBe("h(Tout,w)=hout");
    const filled = fillSlotsHtml(
      typesetRelation(relation).numbers,
      written({ h_out: 100.6, w: 0, "=": 372.8 }),
    );
    const parts = filled.split('<span class="part">').slice(1);
    expect(parts.map((part) => part.match(/part-name">([^<]*)/)?.[1])).toEqual([
      "wanted",
      "found",
      "put back",
    ]);
    expect(parts.map((part) => halves(part).read)).toEqual([
      "h(Tout,0 kg/kg)=100.6",
      "Tout=372.8 K",
      "h(372.8 K,0 kg/kg)=100.6",
    ]);
  });

  test("numerical: the declared TeX, and the result", () => {
    const relation = numerical({
      ...about,
      inputs: { r: ratio },
      result: ratio,
      tex: "r = \\sum_i r_i",
      method: "series",
      compute: () => 1,
    });
    expect(halves(typesetRelation(relation).symbols).read).toContain("∑");
    expect(numbersOf(relation, { "=": 2 }).read).toBe("r=2.000");
  });
});

test("what cannot be typeset names the relation", () => {
  expect(() => typesetRelation(between("a - q_x", ["a"]))).toThrow(
    "test/relation: q_x is neither an input nor a constant",
  );
  expect(() => typesetRelation(between("a -", ["a"]))).toThrow(/^test\/relation: /);
  expect(() => typesetSymbol("no such")).toThrow('calc/symbols.ts has no symbol "no such"');
});
