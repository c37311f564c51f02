import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { expect, test } from "vitest";
import { onlyCarried, onlyWoff2, shorterFaces } from "../../../src/integrations/katex-fonts.ts";
import { renderTex } from "../../../src/integrations/typeset/render-tex.ts";

test.each(["katex.css", "katex.min.css"])("%s keeps its WOFF2 fonts and nothing older", async (name) => {
  const css = await readFile(createRequire(import.meta.url).resolve(`katex/dist/${name}`), "utf8");
  const kept = onlyWoff2(css);
  const count = (text: string, format: RegExp) => text.match(format)?.length ?? 0;
  const faces = count(css, /@font-face/g);
  expect(faces).toBeGreaterThan(15);
  expect(count(kept, /url\([^)]*\.woff2\)/g)).toBe(faces);
  expect(count(kept, /url\(/g)).toBe(faces);
  expect(kept.replaceAll(/@font-face\s*\{[^}]*\}/g, "")).toBe(css.replaceAll(/@font-face\s*\{[^}]*\}/g, ""));
});

test("the two faces of every page come from the shorter files, the others from the package", async () => {
  const css = onlyWoff2(
    await readFile(createRequire(import.meta.url).resolve("katex/dist/katex.css"), "utf8"),
  );
  const shorter = shorterFaces(css, "/here");
  expect(shorter.match(/url\(\/here\/[^)]*\)/g)?.sort()).toEqual([
    "url(/here/KaTeX_Main-Regular.woff2)",
    "url(/here/KaTeX_Math-Italic.woff2)",
  ]);
  expect(shorter.replaceAll("/here/", "fonts/")).toBe(css);
});

test("of KaTeX's own sheet the faces stay that formulas here use, and every rule", async () => {
  const css = await readFile(createRequire(import.meta.url).resolve("katex/dist/katex.css"), "utf8");
  const kept = onlyCarried(css);
  expect([...kept.matchAll(/fonts\/(KaTeX_[\w-]+)\.woff2/g)].map(([, name]) => name).sort()).toEqual([
    "KaTeX_Main-Regular",
    "KaTeX_Math-Italic",
    "KaTeX_Size1-Regular",
    "KaTeX_Size2-Regular",
    "KaTeX_Size3-Regular",
    "KaTeX_Size4-Regular",
  ]);
  const rules = (sheet: string) => sheet.replaceAll(/@font-face\s*\{[^}]*\}\s*/g, "");
  expect(rules(kept)).toBe(rules(css));
});

test.each([
  String.raw`\mathbb{R}`,
  String.raw`\mathbf{x}`,
  String.raw`\mathcal{L}`,
  String.raw`\boldsymbol{x}`,
])("%s, whose font is not carried, is refused", (tex) => {
  expect(() => renderTex(tex)).toThrow("no font");
});

test("letters, numbers, upright words and Greek are carried", () => {
  expect(renderTex(String.raw`\dot m_\mathrm{a} = \text{3.2} \sum_{i} \varphi`)).toContain("katex");
});
