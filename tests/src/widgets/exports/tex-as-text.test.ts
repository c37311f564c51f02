import { expect, test } from "vitest";
import { numberTex } from "../../../../calc/relation/number-tex.ts";
import { texAsText } from "../../../../src/widgets/exports/tex-as-text.ts";
import { texText } from "../../../../src/widgets/exports/tex-text.ts";

test.each([
  ["\\rho = \\frac{p}{R_\\mathrm{m} \\, T}", "ρ = p/(R_m T)"],
  ["\\frac{\\frac{a}{b}}{c}", "(a/b)/c"],
  ["\\dot{m}_\\mathrm{a} = \\eta_\\mathrm{v} \\, \\rho", "ṁ_a = η_v ρ"],
  ["= 391.2\\;\\mathrm{K}", "= 391.2 K"],
  ["= 2.5 \\times 10^{-5}\\;\\mathrm{m^2}", "= 2.5 × 10⁻⁵ m²"],
  ["e^{-\\mathrm{NTU}}", "e^(-NTU)"],
  ["2^{0.286}", "2^0.286"],
  ["\\sqrt{4 + R^{2}} + \\sqrt[3]{x}", "√(4 + R²) + ∛(x)"],
  ["\\left(1 - \\frac{a}{b}\\right)", "(1 − a/b)"],
  ["\\ln\\mathopen{}\\left(\\frac{a}{b}\\right)\\mathclose{}", "ln(a/b)"],
  ["\\ln x", "ln x"],
  ["\\Delta p", "Δp"],
  ["126.4\\;\\mathrm{{}^\\circ C}", "126.4 °C"],
  ["\\begin{gathered} a = 1 \\\\[1.5ex] b = 2 \\end{gathered}", "a = 1; b = 2"],
  ["p = \\begin{cases} a & T < 1 \\\\ b & T \\ge 1 \\end{cases}", "p = a for T < 1; b for T ≥ 1"],
  ["\\sum_{i=0}^{3} A_i\\,t^i", "Σ_(i=0)^3 A_i t^i".replace("^3", "³")],
])("%s", (tex, text) => expect(texAsText(tex).normalize("NFC")).toBe(text.normalize("NFC")));

test("a written number in math mode", () => {
  expect(numberTex("(−1.5\u00a0×\u00a010⁻⁵)")).toBe("(-1.5 \\times 10^{-5})");
  expect(numberTex("12\u202f345")).toBe("12\\,345");
});

test("what a person typed is no command of TeX", () => {
  expect(texText("50 % & \\input{x} $a_b^c$ ~#")).toBe(
    "50 \\% \\& \\textbackslash{}input\\{x\\} \\$a\\_b\\textasciicircum{}c\\$ \\textasciitilde{}\\#",
  );
  expect(texText("−1.5\u00a0×\u00a010⁻⁵ m² 20\u00a0°C")).toBe(
    "$-$1.5~$\\times$~10\\textsuperscript{-5} m\\textsuperscript{2} 20~\\textdegree{}C",
  );
});
