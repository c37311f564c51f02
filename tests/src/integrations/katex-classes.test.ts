import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
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

/** A folder with a page of each content, and the pages and style sheets that the build makes of them. */
async function built(contents: readonly string[]) {
  const dir = await mkdtemp(join(tmpdir(), "katex-classes-"));
  try {
    for (const [i, content] of contents.entries()) await writeFile(join(dir, `${i}.html`), content);
    const run = katexClasses().hooks["astro:build:done"] as (o: { dir: URL }) => Promise<void>;
    await run({ dir: pathToFileURL(`${dir}/`) });
    const read = async (file: string) => readFile(join(dir, file), "utf8");
    const sheets = (await readdir(dir, { recursive: true })).filter((file) => file.endsWith(".css"));
    return {
      pages: await Promise.all(contents.map((_, i) => read(`${i}.html`))),
      sheets: new Map<string, string>(
        await Promise.all(sheets.map(async (file) => [`/${file}`, await read(file)] as const)),
      ),
    };
  } finally {
    await rm(dir, { recursive: true });
  }
}

const page = (body: string) => `<head></head><body>${body}</body>`;
const linked = (html: string) =>
  [...html.matchAll(/<link rel="stylesheet" href="([^"]*)">/g)].map(([, href = ""]) => href);

test("what many pages use stands in one sheet, and what few use in their own; each page has every rule", async () => {
  const rare = renderTex("\\frac{a}{\\sqrt{\\frac{b}{c}}}^{\\sqrt{d}}");
  const common = Array.from({ length: 5 }, () => page(formula));
  const { pages, sheets } = await built([...common, page(formula + rare), page("None"), rare]);
  expect(pages[6]).toBe(page("None"));
  const [shared] = linked(pages[0] ?? "");
  expect(shared).toMatch(/^\/_astro\//);
  expect(linked(pages[1] ?? "")).toEqual([shared]);
  expect(linked(pages[5] ?? "")).toEqual([shared, expect.stringMatching(/^\/formulas\//)]);
  // A fragment comes into a page that has the shared one.
  expect(linked(pages[7] ?? "")).toEqual([expect.stringMatching(/^\/formulas\//)]);
  for (const html of [...pages.slice(0, 6), pages[7] ?? ""]) {
    expect(html).not.toContain(" style=");
    const rules = [shared ?? "", ...linked(html)].map((href) => sheets.get(href)).join("\n");
    const names = [...html.matchAll(/class="([^"]*)"/g)]
      .flatMap(([, all = ""]) => all.split(" "))
      .filter((one) => /^k[0-9a-z]{1,3}$/.test(one));
    expect(names.length).toBeGreaterThan(0);
    expect(names.filter((name) => !rules.includes(`.katex .${name}{`))).toEqual([]);
  }
});
