import { parse } from "mathjs";
import { describe, expect, test } from "vitest";
import {
  printExpression,
  sidesOf,
  type Writing,
} from "../../../../src/integrations/typeset/print-expression.ts";
import { renderTex } from "../../../../src/integrations/typeset/render-tex.ts";

const letters: Writing = { leaf: (name) => name, call: (name) => name, times: "\\," };
const print = (expression: string) => printExpression(parse(expression), letters);
/** Round brackets only, so that the expectations read as mathematics. */
const plainly = (expression: string) =>
  print(expression)
    .replaceAll(/\\left|\\right|\\mathopen\{\}|\\mathclose\{\}/g, "")
    .replaceAll("\\, ", "")
    .replaceAll("\\times ", "* ");

describe("brackets are those that the meaning needs", () => {
  test.each([
    ["a-(-b)", "a - (-b)"],
    ["a+(-b)", "a + (-b)"],
    ["-(-a)", "-(-a)"],
    ["a-(b-c)", "a - (b - c)"],
    ["(a-b)-c", "a - b - c"],
    ["a*(b+c)", "a (b + c)"],
    ["(a+b)*c", "(a + b) c"],
    ["(-a)*b", "-a b"],
    ["a*(-b)", "a (-b)"],
    ["a-(-b)*c", "a - (-b) c"],
    ["-(a*b)", "-a b"],
    ["-(a+b)", "-(a + b)"],
    ["a*(b*c)", "a b c"],
    ["((a))", "a"],
    ["(a+b)", "a + b"],
  ])("%s", (expression, tex) => {
    expect(plainly(expression)).toBe(tex);
  });
});

describe("quotients, powers and roots", () => {
  test.each([
    ["a/(b/c)", "\\frac{a}{\\frac{b}{c}}"],
    ["a/b/c", "\\frac{\\frac{a}{b}}{c}"],
    ["a*b/c", "\\frac{a b}{c}"],
    ["a/(b*c)", "\\frac{a}{b c}"],
    ["a/b*c", "\\frac{a}{b} c"],
    ["(a+b)/(c-d)", "\\frac{a + b}{c - d}"],
    ["(a/b)^c", "(\\frac{a}{b})^{c}"],
    ["-a^2", "-a^{2}"],
    ["(-a)^2", "(-a)^{2}"],
    ["(a^b)^c", "(a^{b})^{c}"],
    ["a^b^c", "a^{b^{c}}"],
    ["(a*b)^2", "(a b)^{2}"],
    ["r^((kappa-1)/kappa)", "r^{(kappa - 1)/kappa}"],
    ["r^(a/(b*c))", "r^{a/(b c)}"],
    ["r^(-a/b)", "r^{-a/b}"],
    ["sqrt(a/b)", "\\sqrt{\\frac{a}{b}}"],
    ["sqrt(a)^3", "\\sqrt{a}^{3}"],
    ["cbrt(a)", "\\sqrt[3]{a}"],
    ["exp(-a/b)", "e^{-a/b}"],
    ["exp(a)^2", "(e^{a})^{2}"],
  ])("%s", (expression, tex) => {
    expect(plainly(expression)).toBe(tex);
  });
});

describe("functions", () => {
  test.each([
    ["log(a/b)", "\\ln(\\frac{a}{b})"],
    ["log(a)^2", "(\\ln(a))^{2}"],
    ["a*log(b)", "a \\ln(b)"],
    ["abs(a-b)", "|a - b|"],
    ["max(a, b+c)", "\\max(a, b + c)"],
    ["h(T_s, w)", "h(T_s, w)"],
    ["s(T)-R*log(p(T, w))", "s(T) - R \\ln(p(T, w))"],
  ])("%s", (expression, tex) => {
    expect(plainly(expression)).toBe(tex);
  });

  test("what the printer does not know stops it", () => {
    expect(() => print("a % b")).toThrow("cannot typeset the operator %");
    expect(() => print("a ? b : c")).toThrow("cannot typeset");
    expect(() => print("[a, b]")).toThrow("cannot typeset");
  });
});

describe("numbers in an expression", () => {
  test.each([
    ["2*3*a", "2 * 3 a"],
    ["a*2", "a * 2"],
    ["a*(2*b)", "a * 2 b"],
    ["a*2^b", "a * 2^{b}"],
    ["0.0065*a", "0.0065 a"],
    ["1.5e-7*a", "1.5 * 10^{-7} a"],
    ["(1.5e-7)^a", "(1.5 * 10^{-7})^{a}"],
    ["1e-9", "10^{-9}"],
  ])("%s", (expression, tex) => {
    expect(plainly(expression)).toBe(tex);
  });
});

test("a leaf is told where it stands", () => {
  const seen: Record<string, string> = {};
  const note: Writing = {
    ...letters,
    leaf: (name, position) => {
      seen[name] = position;
      return name;
    },
  };
  printExpression(parse("a - b + c*d^e/f + sqrt(g) + h(i, j+k) - l*m - n^(o/p) - (q - r)"), note);
  expect(seen).toEqual({
    ...{ a: "plain", b: "term", c: "lead", d: "base", e: "plain", f: "plain", g: "plain", i: "argument" },
    ...{
      j: "plain",
      k: "term",
      l: "term",
      m: "factor",
      n: "base",
      o: "lead",
      p: "base",
      q: "plain",
      r: "term",
    },
  });
});

test("a residual has two sides", () => {
  const sides = sidesOf(parse("a + b - (c - d)"));
  expect(sides?.map((side) => side.toString())).toEqual(["a + b", "(c - d)"]);
  expect(sidesOf(parse("a + b"))).toBeUndefined();
  expect(sidesOf(parse("-a"))).toBeUndefined();
});

describe("renderTex", () => {
  test("refuses what KaTeX does not accept", () => {
    expect(() => renderTex("\\frac{a}{")).toThrow(/KaTeX parse error/);
    expect(() => renderTex("\\nothing")).toThrow(/Undefined control sequence/);
    expect(() => renderTex("ä")).toThrow(/unicodeTextInMathMode/);
  });

  test("drops the source text, which would only add bytes", () => {
    expect(renderTex("a")).not.toContain("annotation");
    expect(renderTex("a", { display: true })).toContain("katex-display");
  });
});
