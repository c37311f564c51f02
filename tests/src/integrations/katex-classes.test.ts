import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, test } from "vitest";
import { katexClasses, styleSheet, stylesToClasses } from "../../../src/integrations/katex-classes.ts";
import { renderTex } from "../../../src/integrations/typeset/render-tex.ts";

const formula = renderTex("\\sqrt{\\frac{a}{b}}^{c_2} \\left(\\begin{matrix} d \\\\ e \\end{matrix}\\right)");

/** Every declaration that an element carries, in order, as attribute or by its class. */
const declarations = (html: string, classes = new Map<string, string>()) => {
  const byClass = new Map([...classes].map(([style, name]) => [name, style]));
  return [...html.matchAll(/<span([^>]*)>/g)].flatMap(([, attributes = ""]) => {
    const style = /style="([^"]*?);?"/.exec(attributes)?.[1];
    const own = /class="([^"]*)"/.exec(attributes)?.[1]?.split(" ") ?? [];
    return style ?? own.map((name) => byClass.get(name)).find((found) => found !== undefined) ?? [];
  });
};

test("each style attribute becomes a class with the same declarations", () => {
  const classes = new Map<string, string>();
  const html = stylesToClasses(formula, classes);
  expect(html).not.toContain(" style=");
  expect(declarations(formula).length).toBeGreaterThan(20);
  expect(declarations(html, classes)).toEqual(declarations(formula));
  for (const [style, name] of classes) expect(styleSheet(classes)).toContain(`.katex .${name}{${style}}`);
});

test("nothing else changes", () => {
  const without = (html: string) => html.replaceAll(/ (?:class|style)="[^"]*"/g, "");
  expect(without(stylesToClasses(formula, new Map()))).toBe(without(formula));
  const plain = '<p class="a">b <span class="c">d</span></p>';
  expect(stylesToClasses(plain, new Map())).toBe(plain);
});

test("formulas in the properties of an island get the same classes", () => {
  const asAttribute = (text: string) =>
    text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
  const classes = new Map<string, string>();
  const html = stylesToClasses(formula, classes);
  const size = classes.size;
  const properties = (formula: string) =>
    `<astro-island props="${asAttribute(JSON.stringify({ formula }))}">`;
  expect(stylesToClasses(properties(formula), classes)).toBe(properties(html));
  expect(classes.size).toBe(size);
});

test("the built pages share one style sheet", async () => {
  const dir = await mkdtemp(join(tmpdir(), "katex-classes-"));
  try {
    await mkdir(join(dir, "_astro"));
    await writeFile(join(dir, "a.html"), `<head></head><body>${formula}</body>`);
    await writeFile(join(dir, "b.html"), `<head></head><body>${formula}${renderTex("a^b")}</body>`);
    await writeFile(join(dir, "c.html"), "<head></head><body>None</body>");
    const run = katexClasses().hooks["astro:build:done"] as (o: { dir: URL }) => Promise<void>;
    await run({ dir: pathToFileURL(`${dir}/`) });
    const [sheet, ...more] = await readdir(join(dir, "_astro"));
    expect(more).toEqual([]);
    for (const page of ["a.html", "b.html"]) {
      const html = await readFile(join(dir, page), "utf8");
      expect(html).toContain(`<link rel="stylesheet" href="/_astro/${sheet}"></head>`);
      expect(html).not.toContain(" style=");
    }
    expect(await readFile(join(dir, "c.html"), "utf8")).toBe("<head></head><body>None</body>");
  } finally {
    await rm(dir, { recursive: true });
  }
});
